package rinsebell.db;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import rinsebell.floor.Correction;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;

/**
 * The visits whose rows are no longer what their facts say: those that begin, end, or change hands or label; ended ones
 * about which anything new is said; and those whose day was corrected.
 */
final class Touched {

    private final Handle handle;
    private final Set<VisitId> visits = new HashSet<>();
    private final Set<VisitId> spokenOf = new HashSet<>();

    private Touched(Handle handle) {
        this.handle = handle;
    }

    /** @param facts new ones, already in the table */
    static Set<VisitId> by(Handle handle, Collection<Fact> facts) {
        Touched touched = new Touched(handle);
        facts.forEach(touched::look);
        touched.addEnded();
        return touched.visits;
    }

    private void look(Fact fact) {
        if (fact.stream() instanceof Stream.OfVisit of) {
            (showsWhileOpen(fact.event()) ? visits : spokenOf).add(of.visit());
        } else if (fact.stream() instanceof Stream.OfDay of) {
            lookAtDay(of.date(), fact.event());
        }
    }

    private static boolean showsWhileOpen(Event event) {
        return event instanceof StayEvent || event instanceof Correction;
    }

    private void lookAtDay(LocalDate date, Event event) {
        if (event instanceof DayEvent.RecipeFilled filled) {
            visits.addAll(BowlTable.visitsOf(handle, filled.bowl()));
        } else if (event instanceof DayEvent.ThrownAway thrown) {
            visits.addAll(BowlTable.visitsOf(handle, thrown.bowl()));
        } else if (event instanceof DayEvent.ClockShifted || event instanceof Correction) {
            visits.addAll(VisitTable.openSince(handle, anywhereBegun(date)));
        }
    }

    /** No zone is a day and a half from UTC, so this is before the date began wherever the salon stands. */
    private static long anywhereBegun(LocalDate date) {
        return date.minusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
    }

    private void addEnded() {
        spokenOf.removeAll(visits);
        if (!spokenOf.isEmpty()) {
            visits.addAll(VisitTable.ended(handle, List.copyOf(spokenOf)));
        }
    }
}
