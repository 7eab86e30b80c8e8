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

    /** The loudest urgency among them, for the sound. */
    public Urgency loudest() {
        return bells.stream().map(Bell::urgency).max(Enum::compareTo).orElse(Urgency.CALM);
    }
}
