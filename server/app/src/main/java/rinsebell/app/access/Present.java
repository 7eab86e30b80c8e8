package rinsebell.app.access;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** When each device asked for something last, since the server started. */
final class Present {
    private final Supplier<Instant> clock;
    private final Map<Long, Instant> seen = new ConcurrentHashMap<>();

    /** @param clock the salon's */
    Present(Supplier<Instant> clock) {
        this.clock = clock;
    }

    void see(long device) {
        seen.put(device, clock.get());
    }

    void leave(long device) {
        seen.remove(device);
    }

    Optional<Instant> seen(long device) {
        return Optional.ofNullable(seen.get(device));
    }
}
