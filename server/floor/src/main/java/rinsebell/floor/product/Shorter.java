package rinsebell.floor.product;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.unit.Durations;

final class Shorter {
    private Shorter() {}

    /** The shorter of two times of which either may be absent; null when both are. */
    static @Nullable Duration of(@Nullable Duration one, @Nullable Duration other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return Durations.shorter(one, other);
    }
}
