package rinsebell.app.access;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** When each device asked for something last, since the server started. */
final class Present {
    private final Map<Long, Instant> seen = new ConcurrentHashMap<>();

    void see(long device, Instant now) {
        seen.put(device, now);
    }

    void leave(long device) {
        seen.remove(device);
    }

    Optional<Instant> seen(long device) {
        return Optional.ofNullable(seen.get(device));
    }
}
