package rinsebell.floor;

import java.util.Set;
import rinsebell.floor.bell.BellKey;

/** What somebody said to a bell. It quiets that bell for a while, and changes nothing else. */
public sealed interface BellAnswer extends Event permits BellAcknowledged, BellShelved {
    /** Which. */
    BellKey bell();

    @Override
    default Set<Long> hangsOn() {
        return Set.of(bell().anchor());
    }
}
