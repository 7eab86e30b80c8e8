package rinsebell.web.view;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One line of facts about a head: "Rinse by | 14:44 | in 22:12".
 *
 * @param value a clock time or a few words; may be empty
 * @param counts the instant to count to, beside the value; none where nothing is counted
 */
public record Line(String label, String value, @Nullable Instant counts, Urgency urgency) {
    public Line(String label, String value) {
        this(label, value, null, Urgency.CALM);
    }

    public Optional<Instant> counting() {
        return Optional.ofNullable(counts);
    }
}
