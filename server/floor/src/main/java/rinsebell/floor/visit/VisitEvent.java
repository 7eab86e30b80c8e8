package rinsebell.floor.visit;

import java.time.Instant;
import java.util.List;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Reason;

/** Something on one head, or about one client's stay. */
public sealed interface VisitEvent extends Event permits StayEvent, WorkEvent, LookEvent, OnApplication {
    /** Changes the visit that is being folded. */
    void applyTo(VisitFold fold, Fact fact);

    /** What makes this impossible there, whatever is answered; empty when nothing does. */
    default List<Reason> objections(Situation situation) {
        return List.of();
    }

    /** What forbids it as a plan; as a fact it is written down all the same. */
    default List<Reason> restrictions(Situation situation) {
        return List.of();
    }

    /** The earliest instant at which it can have happened. */
    default Instant notBefore(Situation situation) {
        return situation.visit().begin();
    }
}
