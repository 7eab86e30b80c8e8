package rinsebell.web.view;

import java.util.List;

/**
 * A table. The first cell of a row names it.
 *
 * @param caption what it shows
 * @param folded whether it is only opened on demand: it tells what is drawn beside it
 */
public record Table(String caption, List<String> heads, List<Row> rows, boolean folded) {

    /** @param amiss whether it tells of something that should not be so; its words say so too */
    public record Row(List<String> cells, boolean amiss) {
        public Row(String... cells) {
            this(List.of(cells), false);
        }

        public String name() {
            return cells.get(0);
        }

        public List<String> rest() {
            return cells.subList(1, cells.size());
        }
    }
}
