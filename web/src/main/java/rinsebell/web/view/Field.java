package rinsebell.web.view;

import java.util.List;
import java.util.Locale;

/**
 * One field of a form.
 *
 * @param value what was typed or chosen so far
 * @param options the choices of {@link Kind#CHOICE}, {@link Kind#CHOICES} and {@link Kind#LIST}
 * @param hint what may be written here, with its unit; may be empty
 * @param problem what is wrong with the value; empty when nothing is
 */
public record Field(
        Kind kind, String name, String label, String value, List<Option> options, String hint, String problem) {
    public enum Kind {
        TEXT,
        LONG_TEXT,
        /** The text of a file, which can be chosen where scripts run. */
        FILE,
        NUMBER,
        /** Figures that nobody reads along. */
        PIN,
        /** Clock time to the minute. */
        TIME,
        DATE,
        /** One of a few, as tiles to press. */
        CHOICE,
        /** Any of a few, as tiles to press. */
        CHOICES,
        /** One of many. */
        LIST,
        /** Each opens a page, its value or else this one again, with all that is typed and with itself as well. */
        OPENS,
        HIDDEN;

        /** The type of a plain {@code input}. */
        public String type() {
            return this == NUMBER ? "text" : this == PIN ? "password" : name().toLowerCase(Locale.ROOT);
        }
    }

    public record Option(String value, String label, boolean chosen) {}

    public boolean wrong() {
        return !problem.isEmpty();
    }

    public String problemId() {
        return name + "-problem";
    }

    public String hintId() {
        return name + "-hint";
    }
}
