package rinsebell.floor;

import java.util.Set;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;

/**
 * Somebody has seen a bell: it is quiet, and stays visible, until it comes to a further stage, rings for a further reason,
 * or the house's interval is over. What was seen is kept as the stage, so that a set-back hushes none that nobody has seen.
 *
 * @param bell which
 * @param step how far it had come
 * @param priority how it rang
 * @param reasons what it rang for, where that is a restriction
 * @param explained whether a reason was given, in a text of its own
 */
public record BellAcknowledged(
        BellKey bell, Stage.Step step, Priority priority, Set<ReasonCode> reasons, boolean explained)
        implements BellAnswer {
    public BellAcknowledged {
        reasons = Set.copyOf(reasons);
    }

    /** Whether it rings for this no more: the gate was passed, and why has been said. */
    public boolean ends() {
        return explained && bell.kind() == BellKind.PASSED_GATE;
    }
}
