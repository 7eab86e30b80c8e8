package rinsebell.floor;

import java.time.Duration;
import rinsebell.floor.bell.BellKey;

/**
 * Somebody has put a bell off: it is quiet and stays visible for a while, or until it comes to a further stage, and then
 * returns by itself.
 *
 * @param bell which
 * @param span for how long
 * @param why why
 */
public record BellShelved(BellKey bell, Duration span, Why why) implements BellAnswer {
    /** Why a bell is put off. */
    public enum Why {
        /** Both hands are at work on another head. */
        HANDS_FULL,
        /** Somebody is on the way to it. */
        ON_THE_WAY,
        /** The client is away from the place for a moment. */
        CLIENT_AWAY,
        /** Another reason, told in the note. */
        OTHER
    }

    public BellShelved {
        if (span.isNegative() || span.isZero()) {
            throw new IllegalArgumentException("a bell is put off for some time, not for " + span);
        }
    }
}
