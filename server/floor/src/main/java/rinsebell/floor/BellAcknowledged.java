package rinsebell.floor;

import java.util.Set;
import rinsebell.floor.bell.BellKey;

/**
 * Somebody has seen a bell: it is quiet, and stays visible.
 *
 * @param bell which
 */
public record BellAcknowledged(BellKey bell) implements Event {
    @Override
    public Set<Long> hangsOn() {
        return Set.of(bell.anchor());
    }
}
