package rinsebell.floor.client;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.ClientId;

/**
 * A client, as they are picked from a list.
 *
 * @param lastHere when they last arrived; null for never
 */
public record KnownClient(
        ClientId id, String label, @Nullable Instant lastHere) {

    public Optional<Instant> last() {
        return Optional.ofNullable(lastHere);
    }
}
