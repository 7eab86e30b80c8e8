package rinsebell.floor.bell;

import java.util.Map;

/**
 * The states of an alarm in ISA-18.2 / IEC 62682, as far as a bell has them, and how one leads to another.
 *
 * <p>Not used, and why: <em>latched</em>, since what a bell rings for is either ended by the act that is recorded, or still
 * there; <em>suppressed by design</em>, since a bell that shall not ring in some state of the floor is not made in it (the
 * check that falls due as the rinse does); <em>out of service</em>, since no bell that somebody's scalp hangs on can be
 * switched off.
 */
public enum AlarmState {
    /** Nothing rings; a silent prompt may be shown. */
    NORMAL,
    /** It rings. */
    UNACKNOWLEDGED,
    /** Somebody has seen it: quiet, visible, and rung again after the house's interval. */
    ACKNOWLEDGED,
    /** What it rang for went away by itself before anybody had seen it: silent, and listed. */
    RETURNED_UNACKNOWLEDGED,
    /** Put off for a few minutes, by somebody and for a reason; it returns by itself. */
    SHELVED;

    /** What happens to an alarm. */
    public enum Happening {
        /** What it rings for begins, or comes to a further stage. */
        RAISED,
        SEEN,
        /** The house's interval after it was seen is over. */
        AGAIN,
        SHELVED,
        SHELF_OVER,
        /** What it rang for is gone, without anybody having done something about it: a correction, a changed policy. */
        RETURNED,
        /** What it asks for was done and recorded: that it was seen as well goes without saying. */
        ACTED
    }

    private static final Map<AlarmState, Map<Happening, AlarmState>> TABLE = Map.of(
            NORMAL, Map.of(Happening.RAISED, UNACKNOWLEDGED),
            UNACKNOWLEDGED,
                    Map.of(
                            Happening.SEEN, ACKNOWLEDGED,
                            Happening.SHELVED, SHELVED,
                            Happening.RETURNED, RETURNED_UNACKNOWLEDGED,
                            Happening.ACTED, NORMAL),
            ACKNOWLEDGED,
                    Map.of(
                            Happening.RAISED, UNACKNOWLEDGED,
                            Happening.AGAIN, UNACKNOWLEDGED,
                            Happening.SHELVED, SHELVED,
                            Happening.RETURNED, NORMAL,
                            Happening.ACTED, NORMAL),
            RETURNED_UNACKNOWLEDGED,
                    Map.of(
                            Happening.RAISED, UNACKNOWLEDGED,
                            Happening.SEEN, NORMAL,
                            Happening.ACTED, NORMAL),
            SHELVED,
                    Map.of(
                            Happening.RAISED, UNACKNOWLEDGED,
                            Happening.SEEN, ACKNOWLEDGED,
                            Happening.SHELF_OVER, UNACKNOWLEDGED,
                            Happening.RETURNED, NORMAL,
                            Happening.ACTED, NORMAL));

    /** The state after that; the same where it changes nothing. */
    public AlarmState after(Happening happening) {
        return TABLE.getOrDefault(this, Map.of()).getOrDefault(happening, this);
    }

    /** Whether it sounds. */
    public boolean isRinging() {
        return this == UNACKNOWLEDGED;
    }
}
