package rinsebell.web.view;

import java.util.List;

/**
 * The bells that a screen shows on top, most urgent first.
 *
 * @param more how many further ones are not shown here
 */
public record BellStrip(List<Bell> bells, int more) implements Fragment {
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

    /** The loudest urgency among those that nobody has heard: what the screen sounds. */
    public Urgency loudest() {
        return bells.stream()
                .filter(bell -> !bell.heard())
                .map(Bell::urgency)
                .max(Enum::compareTo)
                .orElse(Urgency.CALM);
    }
}
