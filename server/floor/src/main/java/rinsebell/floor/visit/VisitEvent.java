package rinsebell.floor.visit;

import rinsebell.floor.Event;
import rinsebell.floor.Fact;

/** Something on one head, or about one client's stay. */
public sealed interface VisitEvent extends Event permits StayEvent, WorkEvent, LookEvent {
    /** Changes the visit that is being folded. */
    void applyTo(VisitFold fold, Fact fact);
}
