package rinsebell.floor.client;

import java.time.LocalDate;

/**
 * A test on a client, or a reaction of theirs, that was told of outside a visit.
 *
 * @param on the salon's date: of a test, when it was applied; of a reaction, when they told of it
 */
public record ClientNote(Kind kind, LocalDate on) {

    /** What was noted. */
    public enum Kind {
        /** A skin test for dye that showed nothing. */
        SKIN_TEST_FINE,
        /** A skin test for dye that showed a reaction. */
        SKIN_TEST_REACTED,
        /** An earlier reaction to hair dye. */
        REACTION
    }
}
