package rinsebell.db;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/**
 * The rows of visits: always the fold of the facts in the table, made again as a whole. A correction after the end, or
 * a recipe filled in later, needs no code of its own here.
 */
final class History {

    private History() {}

    /** Writes the rows of these visits afresh. */
    static void write(Handle handle, Collection<VisitId> visits) {
        if (!visits.isEmpty()) {
            Floor floor = floor(handle, visits);
            VisitTable.delete(handle, visits);
            visits.forEach(id -> floor.visit(id).ifPresent(visit -> write(handle, floor, visit)));
        }
    }

    /** A floor of these visits alone, with the days on which their bowls were mixed. */
    static Floor floor(Handle handle, Collection<VisitId> visits) {
        List<Fact> facts = new ArrayList<>(FactTable.in(handle, List.of(Stream.SALON)));
        Floor salon = Floor.of(facts);
        List<Fact> stays =
                FactTable.in(handle, visits.stream().map(Stream::visit).toList());
        facts.addAll(stays);
        if (!stays.isEmpty()) {
            facts.addAll(FactTable.ofDays(handle, day(salon, first(stays)), day(salon, last(stays))));
        }
        return Floor.of(facts);
    }

    private static LocalDate day(Floor salon, Instant instant) {
        return salon.salon().dayOf(instant);
    }

    private static Instant first(List<Fact> facts) {
        return facts.stream().map(Fact::happened).min(Instant::compareTo).orElseThrow();
    }

    private static Instant last(List<Fact> facts) {
        return facts.stream().map(Fact::recorded).max(Instant::compareTo).orElseThrow();
    }

    private static void write(Handle handle, Floor floor, Visit visit) {
        VisitTable.write(handle, visit);
        if (!visit.isOpen()) {
            BowlTable.write(handle, visit.id(), bowls(floor, visit), portion -> name(floor, portion));
            ApplicationTable.write(handle, visit);
            HeatTable.write(handle, visit);
            CheckTable.write(handle, visit);
            ComplaintTable.write(handle, visit);
        }
    }

    private static List<Bowl> bowls(Floor floor, Visit visit) {
        Set<BowlId> used = new HashSet<>(
                visit.applications().stream().map(Application::bowl).toList());
        return floor.day().bowls().stream()
                .filter(bowl -> used.contains(bowl.id()) || visit.id().equals(bowl.forVisit()))
                .toList();
    }

    private static String name(Floor floor, Portion portion) {
        return floor.salon()
                .product(portion.product())
                .map(product -> product.directions(portion.edition()).name())
                .orElse("");
    }
}
