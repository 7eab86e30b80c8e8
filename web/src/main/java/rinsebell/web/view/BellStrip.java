package rinsebell.web.view;

import java.util.List;

/**
 * The bells that a screen shows on top, most urgent first.
 *
 * @param more how many further ones are not shown here
 * @param loudest the loudest urgency among all that nobody has heard, shown here or not: what the screen sounds
 */
public record BellStrip(List<Bell> bells, int more, Urgency loudest) implements Fragment {
    @Override
    public String template() {
        return "part/bells.jte";
    }

    @Override
    public String id() {
        return "bells";
    }

    /** All that ring or ask just now, shown here or not. */
    public int total() {
        return bells.size() + more;
    }
}
