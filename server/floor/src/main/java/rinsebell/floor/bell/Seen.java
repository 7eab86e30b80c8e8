package rinsebell.floor.bell;

import java.time.Instant;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.ReasonCode;

/**
 * That somebody has seen a bell.
 *
 * @param what they saw of it
 * @param at when
 */
public record Seen(BellAcknowledged what, Instant at) {
    /**
     * Whether this stage was seen with it: it is no further, rings no louder, and had begun by then. A rinse that was
     * put off, say, is due again later, and nobody has seen that.
     */
    boolean covers(Stage stage) {
        return stage.step().compareTo(what.step()) <= 0
                && stage.priority().compareTo(what.priority()) <= 0
                && !stage.from().isAfter(at);
    }

    boolean covers(Stage stage, ReasonCode reason) {
        return covers(stage) && what.reasons().contains(reason);
    }
}
