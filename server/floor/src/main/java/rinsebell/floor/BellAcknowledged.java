package rinsebell.floor;

import java.util.Set;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;

/**
 * Somebody has seen a bell: it is quiet, and stays visible, until it comes to a further stage or rings for a further
 * reason. What was seen is kept as the stage, so that a set-back hushes none that nobody has seen.
 *
 * @param bell which
 * @param step how far it had come
 * @param priority how it rang
 * @param reasons what it rang for, where that is a restriction
 */
public record BellAcknowledged(BellKey bell, Stage.Step step, Priority priority, Set<ReasonCode> reasons)
        implements Event {
    public BellAcknowledged {
        reasons = Set.copyOf(reasons);
    }

    @Override
    public Set<Long> hangsOn() {
        return Set.of(bell.anchor());
    }
}
