package rinsebell.floor.visit;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A look at the scalp.
 *
 * @param seq the number of its fact
 * @param at when
 * @param finding what was seen
 * @param decision what was decided; null for "by the directions"
 */
public record ScalpCheck(
        long seq, Instant at, Finding finding, @Nullable CheckDecision decision) {
    public enum Finding {
        FINE,
        PINK,
        SORE
    }

    public boolean saysRinse() {
        return decision instanceof CheckDecision.Rinse;
    }
}
