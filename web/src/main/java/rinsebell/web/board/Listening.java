package rinsebell.web.board;

import rinsebell.floor.bell.Ear;

/**
 * A device that is there.
 *
 * @param ear for whom it listens
 * @param state whether it can be heard
 * @param checked whether somebody has heard it ring since the shift began
 */
public record Listening(Ear ear, State state, boolean checked) {
    /** Whether a device can be heard, and if not, why. */
    public enum State {
        ON,
        /** Its browser waits for a touch, or the system took the sound away. */
        OFF,
        /** Somebody made it quiet for a while. */
        MUTED,
        /** It has no sound at all. */
        NONE
    }

    boolean isHeard() {
        return state == State.ON;
    }
}
