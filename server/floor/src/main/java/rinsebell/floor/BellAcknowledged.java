package rinsebell.floor;

import java.util.Set;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;

/**
 * Somebody has seen a bell: it is quiet, and stays visible, until it comes to a further stage. What was seen is kept as
 * the stage and not as an instant, so that a set-back neither wakes a bell nor hushes a stage that nobody has seen.
 *
 * @param bell which
 * @param step how far it had come
 * @param priority how it rang
 */
public record BellAcknowledged(BellKey bell, Stage.Step step, Priority priority) implements Event {
    /** Whether this stage was seen with it: it is no further, and rings no louder. */
    public boolean covers(Stage stage) {
        return stage.step().compareTo(step) <= 0 && stage.priority().compareTo(priority) <= 0;
    }

    @Override
    public Set<Long> hangsOn() {
        return Set.of(bell.anchor());
    }
}
