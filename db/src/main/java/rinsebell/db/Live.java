package rinsebell.db;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import rinsebell.db.codec.FactRow;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ground;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.visit.VisitId;

/**
 * Finds the facts that the live floor is made of, which is what a floor that never stopped would still have: it lets go
 * of ended visits, and of days that no visit needs, at the end of a day.
 */
final class Live {

    private static final String DAY_ENDED = FactRow.kindOf(new DayEvent.DayEnded());
    private static final LocalDate FIRST = LocalDate.of(1000, 1, 1);
    private static final LocalDate LAST = LocalDate.of(9999, 12, 31);

    private Live() {}

    /**
     * The set-up, the visits that are open, that came on the day that began then, or of which anything was written down
     * since the day's end before, and the days from the one on which the first of them began, or under which the first
     * of what they rest on was recorded; by number.
     */
    static List<Fact> facts(Handle handle) {
        Optional<Fact> dayEnded = FactTable.last(handle, DAY_ENDED);
        List<Fact> facts = new ArrayList<>(FactTable.in(handle, List.of(Stream.SALON)));
        Salon salon = Floor.of(facts).salon();
        Set<VisitId> visits = visits(handle, salon, dayEnded);
        LocalDate first =
                dayEnded.map(end -> firstDay(handle, salon, visits, end)).orElse(FIRST);
        facts.addAll(FactTable.in(handle, streams(visits)));
        facts.addAll(FactTable.ofDays(handle, first, LAST));
        facts.sort(Comparator.comparingLong(Fact::seq));
        return facts;
    }

    private static List<Stream.OfVisit> streams(Collection<VisitId> visits) {
        return visits.stream().map(Stream.OfVisit::new).toList();
    }

    private static Set<VisitId> visits(Handle handle, Salon salon, Optional<Fact> dayEnded) {
        Set<VisitId> visits = new HashSet<>(VisitTable.open(handle));
        visits.addAll(FactTable.visitsAfter(handle, dayEnded.map(Fact::seq).orElse(0L)));
        dayEnded.map(end -> salon.beginOf(salon.dayOf(end.recorded())))
                .ifPresent(begin -> visits.addAll(VisitTable.arrivedSince(handle, begin)));
        return visits;
    }

    private static LocalDate firstDay(Handle handle, Salon salon, Collection<VisitId> visits, Fact dayEnded) {
        List<VisitId> stayed =
                visits.stream().filter(visit -> visit.value() < dayEnded.seq()).toList();
        LocalDate recorded = FactTable.firstDaySince(handle, lowest(handle, stayed, dayEnded));
        return VisitTable.firstArrived(handle, stayed)
                .map(salon::dayOf)
                .filter(day -> day.isBefore(recorded))
                .orElse(recorded);
    }

    /** Who came after the day's end rests on what was recorded since, or on what the floor had kept for others. */
    private static long lowest(Handle handle, Collection<VisitId> stayed, Fact dayEnded) {
        OptionalLong ground =
                Ground.lowest(FactTable.in(handle, streams(stayed)), numbers -> FactTable.numbered(handle, numbers));
        return Math.min(ground.orElse(dayEnded.seq()), dayEnded.seq());
    }
}
