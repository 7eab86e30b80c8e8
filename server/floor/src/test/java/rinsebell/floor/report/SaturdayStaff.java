package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;

/** Somebody who works on the {@link OrdinarySaturday}: one thing at a time. */
final class SaturdayStaff {
    final StaffId id;
    final Role role;
    private Instant free = Instant.MIN;
    private Runnable ending = () -> {};

    SaturdayStaff(StaffId id, Role role) {
        this.id = id;
        this.role = role;
    }

    /** Whether their hands are free; what they had in hand is done by then. */
    boolean isFree(Instant now) {
        if (now.isBefore(free)) {
            return false;
        }
        var done = ending;
        ending = () -> {};
        done.run();
        return !now.isBefore(free);
    }

    /** Does something for so long, and presses when it is done. */
    void does(Instant now, Duration time, Runnable press) {
        free = now.plus(time);
        ending = press;
    }
}
