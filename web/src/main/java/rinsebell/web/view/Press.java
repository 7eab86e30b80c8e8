package rinsebell.web.view;

import java.util.List;
import java.util.Locale;

/**
 * Something to press.
 *
 * @param hint a quieter line below the label; may be empty
 * @param to the address that it opens or sends to
 * @param sends whether it records at once; otherwise it opens a page
 * @param fields what it sends besides the press id
 */
public record Press(String label, String hint, Weight weight, String to, boolean sends, List<Hidden> fields) {

    public enum Weight {
        /** What most people press here next. */
        MAIN,
        PLAIN,
        /** Discomfort that needs a look. */
        CARE,
        /** Discomfort that means off at once. */
        DANGER;

        public String css() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A field that is sent without being shown. */
    public record Hidden(String name, String value) {}

    public static Press opens(String label, String hint, String href) {
        return new Press(label, hint, Weight.PLAIN, href, false, List.of());
    }

    public static Press sends(String label, String hint, String action, Hidden... fields) {
        return new Press(label, hint, Weight.PLAIN, action, true, List.of(fields));
    }

    public Press as(Weight other) {
        return new Press(label, hint, other, to, sends, fields);
    }
}
