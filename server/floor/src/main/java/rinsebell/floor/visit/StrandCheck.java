package rinsebell.floor.visit;

import java.time.Instant;
import java.util.Optional;
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

    /** When it is looked at again at the latest; empty where it was not said so. */
    public Optional<Instant> looksAgainAt() {
        return decision instanceof CheckDecision.LookAgain again
                ? Optional.of(at.plus(again.after()))
                : Optional.empty();
    }
}
