package rinsebell.floor;

import java.time.Duration;
import java.util.Set;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.VisitEvent;

/** What a fact says. */
public sealed interface Event permits SalonEvent, DayEvent, VisitEvent, Correction, BellAnswer {
    /**
     * The facts that this one hangs on: withdrawing one of those takes this one along.
     *
     * @return numbers of facts
     */
    default Set<Long> hangsOn() {
        return Set.of();
    }

    /**
     * This event after the clock was put right.
     *
     * @param by what every instant moves by
     */
    default Event moved(Duration by) {
        return this;
    }
}
