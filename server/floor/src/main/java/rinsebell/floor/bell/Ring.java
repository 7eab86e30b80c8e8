package rinsebell.floor.bell;

import java.time.Instant;

/**
 * What a bell does from an instant on, until its next ring, if nobody does anything.
 *
 * @param from since when: reached counts
 * @param state of ISA-18.2
 * @param stage the stage it is in
 * @param reach whom it sounds for; nobody while it does not ring
 */
public record Ring(Instant from, AlarmState state, Stage stage, Reach reach) {
    public boolean isRinging() {
        return state.isRinging();
    }

    boolean isAs(Ring other) {
        return state == other.state && stage.equals(other.stage) && reach.equals(other.reach);
    }
}
