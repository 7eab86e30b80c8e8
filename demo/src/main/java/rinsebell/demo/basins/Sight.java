package rinsebell.demo.basins;

import java.util.List;
import rinsebell.floor.basin.Work;

/**
 * What everybody in the salon may know at an instant: what is written on leaflets, what has happened, how long things take
 * in this house, and whom somebody has looked at.
 *
 * @param now second of the day
 * @param hands pairs at the basins in all
 * @param basins in all; their numbers are from 1
 * @param heads for whom something is mixed, on, or under way
 */
record Sight(long now, int hands, int basins, List<Seen> heads) {
    Sight {
        heads = List.copyOf(heads);
    }

    /** Where a head is. */
    enum Stage {
        /** Its bowl is being mixed: {@code since} is when that began. */
        MIXING,
        ON,
        /** Its foils come out, or it walks. */
        BEFORE,
        /** It could have water at once. */
        PREPARED,
        /** At a basin. */
        THERE
    }

    /**
     * @param number of the head
     * @param kind what is on
     * @param work as the house reckons it
     * @param firstOn second of the day
     * @param ready from when it may be rinsed, second of the day
     * @param by by when it must be, second of the day
     * @param asked since when somebody has said that it should be rinsed; {@link #NOBODY} before
     * @param stage where it is
     * @param since when that began
     * @param basin at which it is, from 1; 0 at none
     * @param part which of its parts, from 0, is done there or waits for hands
     * @param partSince when that part began; {@link #NOBODY} where it waits for hands
     */
    record Seen(
            int number,
            Kind kind,
            Work work,
            long firstOn,
            long ready,
            long by,
            long asked,
            Stage stage,
            long since,
            int basin,
            int part,
            long partSince) {}

    /** Later than everything. */
    static final long NOBODY = Long.MAX_VALUE / 4;

    List<Seen> at(Stage stage) {
        return heads.stream().filter(head -> head.stage() == stage).toList();
    }

    boolean isFree(int basin) {
        return heads.stream().noneMatch(head -> head.basin() == basin);
    }

    /** The first free basin; 0 where there is none. */
    int freeBasin() {
        for (var basin = 1; basin <= basins; basin++) {
            if (isFree(basin)) {
                return basin;
            }
        }
        return 0;
    }

    /** Pairs that do nothing now. */
    int freeHands() {
        return hands - (int) heads.stream().filter(Sight::holdsHands).count();
    }

    private static boolean holdsHands(Seen head) {
        return head.stage() == Stage.BEFORE
                || (head.stage() == Stage.THERE
                        && head.partSince() != NOBODY
                        && head.work().parts().get(head.part()).what().takesHands());
    }
}
