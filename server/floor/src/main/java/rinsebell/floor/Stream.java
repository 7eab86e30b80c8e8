package rinsebell.floor;

import java.time.LocalDate;
import rinsebell.floor.visit.VisitId;

/** What a fact belongs to. */
public sealed interface Stream {
    /** The set-up: rooms, staff, products, policy. */
    record OfSalon() implements Stream {}

    /**
     * One salon day: bowls, breaks, basins, outages.
     *
     * @param date the salon's own date of that day
     */
    record OfDay(LocalDate date) implements Stream {}

    /** One client from arrival to leaving. */
    record OfVisit(VisitId visit) implements Stream {}

    Stream SALON = new OfSalon();

    static Stream day(LocalDate date) {
        return new OfDay(date);
    }

    static Stream visit(VisitId visit) {
        return new OfVisit(visit);
    }
}
