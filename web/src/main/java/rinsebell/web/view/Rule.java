package rinsebell.web.view;

import java.util.Locale;

/**
 * One thing that a bowl forbids or allows while it is on.
 *
 * @param text in plain words, such as "No dryer or hot cap"
 * @param why where it comes from, such as "directions of 3 Nov"; may be empty
 */
public record Rule(Kind kind, String text, String why) {
    public enum Kind {
        FORBIDDEN,
        ALLOWED,
        /** Forbidden, and being done: this one has the colour of a high bell. */
        BROKEN;

        public String css() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The bundle key of the kind in words. */
        public String key() {
            return "rule." + css();
        }
    }
}
