package rinsebell.web.view;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The bells that a screen shows on top, most urgent first.
 *
 * @param more how many further ones are not shown here
 * @param rung every bell of the floor as this device rings it, shown here or not
 * @param missed that no server ran for a while and nobody has caught up on it yet; null when that is not so
 */
public record BellStrip(
        List<Bell> bells,
        int more,
        List<Rung> rung,
        @Nullable String missed) implements Fragment {
    public BellStrip {
        bells = List.copyOf(bells);
        rung = List.copyOf(rung);
    }

    /** That no server ran, and leads to where it is caught up on. */
    public Optional<String> catchingUp() {
        return Optional.ofNullable(missed);
    }

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
