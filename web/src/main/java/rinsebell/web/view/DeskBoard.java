package rinsebell.web.view;

import java.util.List;

/**
 * What the front desk needs: when each chair is free, and whether a walk-in fits.
 *
 * @param waiting who waits on the bench
 * @param walkIns one sentence each about what fits where
 */
public record DeskBoard(List<Row> rows, List<Waiting> waiting, List<String> walkIns) implements Fragment {

    /**
     * One chair.
     *
     * @param stage what is going on, such as "lightener on, rinse 14:31 to 14:44"
     * @param earliest clock time at which the chair may be free by the directions; empty when it is free now
     * @param latest clock time at which it is free at the latest; empty when nobody can say
     * @param tell what to tell somebody who asks
     */
    public record Row(
            String chair,
            String who,
            String staff,
            String stage,
            String earliest,
            String latest,
            String tell,
            String href) {
        public boolean isFree() {
            return who.isEmpty();
        }
    }

    /** Somebody on the bench. */
    public record Waiting(String who, String why, String since, String href) {}

    @Override
    public String template() {
        return "part/desk-board.jte";
    }

    @Override
    public String id() {
        return "desk";
    }
}
