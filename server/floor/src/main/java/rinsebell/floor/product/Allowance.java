package rinsebell.floor.product;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * Whether a cover or a heat may be used, and for how long.
 *
 * @param allowed whether at all
 * @param upTo the longest time in one stretch; null for no limit of its own
 */
public record Allowance(boolean allowed, @Nullable Duration upTo) {
    public static final Allowance YES = new Allowance(true, null);
    public static final Allowance NO = new Allowance(false, null);

    public static Allowance upTo(Duration longest) {
        return new Allowance(true, longest);
    }

    /** The stricter of two. */
    public Allowance and(Allowance other) {
        return new Allowance(allowed && other.allowed, Shorter.of(upTo, other.upTo));
    }
}
