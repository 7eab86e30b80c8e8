package rinsebell.db;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jdbi.v3.core.Handle;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.visit.VisitId;

/** Finds the facts that one of the salon's days is told from. */
final class EarlierDay {

    private EarlierDay() {}

    /**
     * The set-up until its end, everybody who was here on it, and the days from the one on which the first of them came;
     * by number.
     */
    static List<Fact> facts(Handle handle, LocalDate day) {
        List<Fact> setUp = FactTable.in(handle, List.of(Stream.SALON));
        Salon salon = Floor.of(setUp).salon();
        Instant end = salon.beginOf(day.plusDays(1));
        List<VisitId> visits = VisitTable.between(handle, salon.beginOf(day), end);
        List<Fact> facts = new ArrayList<>(
                setUp.stream().filter(fact -> fact.recorded().isBefore(end)).toList());
        facts.addAll(FactTable.in(handle, visits.stream().map(Stream::visit).toList()));
        facts.addAll(FactTable.ofDays(handle, firstDay(handle, salon, visits, day), day.plusDays(1)));
        facts.sort(Comparator.comparingLong(Fact::seq));
        return facts;
    }

    private static LocalDate firstDay(Handle handle, Salon salon, List<VisitId> visits, LocalDate day) {
        return VisitTable.firstArrived(handle, visits)
                .map(salon::dayOf)
                .filter(first -> first.isBefore(day))
                .orElse(day)
                // A bowl may be older than whoever it was mixed for.
                .minusDays(1);
    }
}
