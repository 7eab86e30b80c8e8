package rinsebell.floor.visit;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Heat;

/**
 * Heat on a head.
 *
 * @param seq the number of the fact that began it
 * @param heat which
 * @param from when it began
 * @param until when it ended; null while it goes on
 */
public record HeatSpan(
        long seq, Heat heat, Instant from, @Nullable Instant until) {
    public boolean isOn() {
        return until == null;
    }

    boolean isOverAt(Instant at) {
        return until != null && !at.isBefore(until);
    }
}
