package rinsebell.floor.visit;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A look at a strand.
 *
 * @param seq the number of its fact
 * @param at when
 * @param finding what was seen
 * @param decision what was decided; null for "by the directions"
 */
public record StrandCheck(
        long seq,
        Instant at,
        StrandFinding finding,
        @Nullable CheckDecision decision) {
    public boolean saysRinse() {
        return decision instanceof CheckDecision.Rinse;
    }
}
