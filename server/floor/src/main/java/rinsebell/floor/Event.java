package rinsebell.floor;

import java.util.Set;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.VisitEvent;

/** What a fact says. */
public sealed interface Event permits SalonEvent, DayEvent, VisitEvent, Correction, BellAcknowledged {
    /**
     * The facts that this one hangs on: withdrawing one of those takes this one along.
     *
     * @return numbers of facts
     */
    default Set<Long> hangsOn() {
        return Set.of();
    }
}
