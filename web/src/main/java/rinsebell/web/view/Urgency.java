package rinsebell.web.view;

import java.util.Locale;

/**
 * How much something asks of people. Grey is normal; only the last three have a colour, and each has marks and words
 * besides it.
 */
public enum Urgency {
    /** Nothing to do. */
    CALM(""),
    /** Due, and asked without colour or sound. */
    ASKED(""),
    LOW("!"),
    MEDIUM("!!"),
    HIGH("!!!");

    private final String marks;

    Urgency(String marks) {
        this.marks = marks;
    }

    /** The class that style sheets use. */
    public String css() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String marks() {
        return marks;
    }

    public boolean rings() {
        return !marks.isEmpty();
    }

    /** The bundle key of what the marks mean. */
    public String key() {
        return "urgency." + css();
    }
}
