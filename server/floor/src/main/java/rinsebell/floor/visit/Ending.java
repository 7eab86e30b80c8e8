package rinsebell.floor.visit;

import java.time.Instant;

/**
 * How an application ended.
 *
 * @param seq the number of the fact that ended it
 * @param how which of the ways
 * @param at when: for rinsing, the instant water is on
 */
public record Ending(long seq, How how, Instant at) {
    public enum How {
        RINSED,
        WIPED_OFF,
        /** The next bowl went over it; its terms stay on its section. */
        COVERED
    }

    /** Product is off: not merely covered. */
    public boolean isOff() {
        return how != How.COVERED;
    }
}
