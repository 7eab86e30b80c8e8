package rinsebell.demo.basins;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import rinsebell.floor.basin.Work;

/** When those who are at work will be done, as the house reckons; in seconds of the day. */
final class Estimate {
    /** What takes longer than the house reckons is taken to need so many more seconds. */
    private static final long LINGERS = 60;

    private final Sight sight;

    Estimate(Sight sight) {
        this.sight = sight;
    }

    /** A stretch of time in which a pair of hands is taken. */
    record Held(long from, long until) {}

    /** When the work before the basin is done. */
    long prepared(Sight.Seen head) {
        return later(head.since() + head.kind().before());
    }

    private long later(long end) {
        return end > sight.now() ? end : sight.now() + LINGERS;
    }

    /** When a basin is free. */
    long free(int basin) {
        return sight.heads().stream()
                .filter(head -> head.basin() == basin)
                .mapToLong(this::leaves)
                .max()
                .orElse(sight.now());
    }

    /** When any is. */
    long firstFree() {
        return LongStream.rangeClosed(1, sight.basins())
                .map(basin -> free((int) basin))
                .min()
                .orElse(Sight.NOBODY);
    }

    private long leaves(Sight.Seen head) {
        var at = partEnds(head);
        for (var part : rest(head)) {
            at += part.takes().toSeconds();
        }
        return at;
    }

    private long partEnds(Sight.Seen head) {
        var takes = head.work().parts().get(head.part()).takes().toSeconds();
        return head.partSince() == Sight.NOBODY ? sight.now() + takes : later(head.partSince() + takes);
    }

    private static List<Work.Part> rest(Sight.Seen head) {
        return head.work().parts().subList(head.part() + 1, head.work().parts().size());
    }

    /** The hands that somebody will hold from now on who is being prepared, or at a basin. */
    List<Held> held(Sight.Seen head) {
        return switch (head.stage()) {
            case BEFORE -> List.of(new Held(sight.now(), prepared(head)));
            case THERE -> atTheBasin(head);
            default -> List.of();
        };
    }

    private List<Held> atTheBasin(Sight.Seen head) {
        var held = new ArrayList<Held>();
        var from = sight.now();
        var until = partEnds(head);
        add(held, head.work().parts().get(head.part()), from, until);
        for (var part : rest(head)) {
            from = until;
            until = from + part.takes().toSeconds();
            add(held, part, from, until);
        }
        return held;
    }

    private static void add(List<Held> held, Work.Part part, long from, long until) {
        if (part.what().takesHands()) {
            held.add(new Held(from, until));
        }
    }
}
