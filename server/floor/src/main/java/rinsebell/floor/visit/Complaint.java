package rinsebell.floor.visit;

import java.time.Instant;

/**
 * Discomfort that a client spoke of.
 *
 * @param seq the number of its fact
 * @param grade how bad
 * @param at when
 */
public record Complaint(long seq, Grade grade, Instant at) {
    public enum Grade {
        TINGLING,
        /** Burning, swelling or severe itch. */
        BURNING,
        HOT_FOIL;

        /** Off at once, and no chemical on that scalp today. */
        public boolean isOffAtOnce() {
            return this != TINGLING;
        }
    }
}
