package rinsebell.floor.product;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * How often strands and scalp are looked at.
 *
 * @param strandEvery between looks at a strand; null for none
 * @param strandEveryHeated the same under heat; null for as without heat
 * @param scalpEvery between looks at the scalp while the mixture is on scalp; null for none
 * @param scalpEveryHeated the same under heat; null for as without heat
 */
public record Checks(
        @Nullable Duration strandEvery,
        @Nullable Duration strandEveryHeated,
        @Nullable Duration scalpEvery,
        @Nullable Duration scalpEveryHeated) {
    public static final Checks NONE = new Checks(null, null, null, null);

    /** The more frequent of two. */
    public Checks and(Checks other) {
        return new Checks(
                Shorter.of(strandEvery, other.strandEvery),
                Shorter.of(strandEveryHeated, other.strandEveryHeated),
                Shorter.of(scalpEvery, other.scalpEvery),
                Shorter.of(scalpEveryHeated, other.scalpEveryHeated));
    }

    public @Nullable Duration strand(boolean heated) {
        return heated ? Shorter.of(strandEvery, strandEveryHeated) : strandEvery;
    }

    public @Nullable Duration scalp(boolean heated) {
        return heated ? Shorter.of(scalpEvery, scalpEveryHeated) : scalpEvery;
    }
}
