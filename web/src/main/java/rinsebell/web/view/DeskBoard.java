package rinsebell.web.view;

import java.util.List;

/**
 * What the front desk needs: when each chair is free, what will take longer than somebody was told, and whether a walk-in
 * fits.
 *
 * @param overruns one sentence each about who will be done later than they were told
 * @param waiting who waits on the bench
 * @param walkIns one sentence each about what fits where
 * @param ask opens the question whether there is room for somebody
 * @param hours the next hours, chairs and then basins
 */
public record DeskBoard(
        List<Row> rows, List<String> overruns, List<Waiting> waiting, List<String> walkIns, Press ask, Hours hours)
        implements Fragment {

    /**
     * One chair.
     *
     * @param stage what is going on, such as "lightener on, rinse 14:31 to 14:44"
     * @param likely clock time at which the chair is free as often sooner as later; empty where nobody can say
     * @param latest clock time by which it is almost surely free; empty where nobody can say
     * @param tell what to tell whoever is next in this chair
     * @param told keeps what the client was told, where something can be told
     */
    public record Row(
            String chair,
            String who,
            String staff,
            String stage,
            String likely,
            String latest,
            String tell,
            List<Press> told,
            String href) {
        public boolean isFree() {
            return who.isEmpty();
        }
    }

    /**
     * Somebody on the bench.
     *
     * @param tell what to tell them
     */
    public record Waiting(String who, String why, String tell, List<Press> told, String href) {}

    /** On one axis: who holds each chair for how long, and which turns are kept at each basin. */
    public record Hours(Axis axis, List<Track> tracks) {}

    /** @param name of the chair or the basin */
    public record Track(String name, Ribbon ribbon) {}

    @Override
    public String template() {
        return "part/desk-board.jte";
    }

    @Override
    public String id() {
        return "desk";
    }
}
