package rinsebell.web.view;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The bells that a screen shows on top, most urgent first.
 *
 * @param more how many further ones are not shown here
 * @param again after how long what was heard rings again, by the urgency of the bell
 * @param rung every bell of the floor as this device rings it, shown here or not
 * @param missed that no server ran for a while and nobody has caught up on it yet; null when that is not so
 */
public record BellStrip(
        List<Bell> bells,
        int more,
        Map<Urgency, Duration> again,
        List<Rung> rung,
        @Nullable String missed) implements Fragment {
    public BellStrip {
        bells = List.copyOf(bells);
        again = Map.copyOf(again);
        rung = List.copyOf(rung);
    }

    /** The intervals as the script reads them, in milliseconds: {@code low:600000 medium:300000 high:120000}. */
    public String againText() {
        return new TreeMap<>(again)
                .entrySet().stream()
                        .map(one -> one.getKey().css() + ":" + one.getValue().toMillis())
                        .collect(Collectors.joining(" "));
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
