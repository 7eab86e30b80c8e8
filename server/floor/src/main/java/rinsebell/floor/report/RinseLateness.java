package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitFold;

/**
 * How late something came off, as finally known: by all corrections, and by what had happened until it came off. A look
 * at the scalp after the rinse, say, must not change what the rinse had to be in time for.
 *
 * @param visit whose head, as it stood then
 * @param application what came off
 * @param rinseBy until when it had to
 * @param ended when it did: for a rinse, the instant water is on
 */
public record RinseLateness(Visit visit, ApplicationId application, Limit rinseBy, Instant ended) {

    /** Everything that came off on a day and had to by some time, in the order in which it came off. */
    public static List<RinseLateness> of(Floor floor, LocalDate day) {
        return floor.visits().stream()
                .flatMap(visit -> of(floor, visit))
                .filter(one -> floor.salon().dayOf(one.ended).equals(day))
                .sorted(Comparator.comparing(RinseLateness::ended))
                .toList();
    }

    private static Stream<RinseLateness> of(Floor floor, Visit visit) {
        return visit.applications().stream()
                .flatMap(one -> Stream.ofNullable(one.ending())
                        .filter(Ending::isOff)
                        .flatMap(ending -> of(floor, visit, one, ending).stream()));
    }

    private static Optional<RinseLateness> of(Floor floor, Visit visit, Application one, Ending ending) {
        return before(floor, visit, ending)
                .flatMap(then -> then.application(one.id())
                        .flatMap(on -> Timing.of(floor, then, on).rinseBy())
                        .map(limit -> new RinseLateness(then, one.id(), limit, ending.at())));
    }

    /** The head as it stood when that ended. */
    private static Optional<Visit> before(Floor floor, Visit visit, Ending ending) {
        var facts = floor.standing(rinsebell.floor.Stream.visit(visit.id())).stream()
                .takeWhile(fact -> fact.seq() != ending.seq())
                .toList();
        return VisitFold.of(visit.id(), facts);
    }

    /** Below zero for early. */
    public Duration late() {
        return Duration.between(rinseBy.at(), ended);
    }

    public boolean isLate() {
        return late().toMillis() > 0;
    }

    /** Whose client it was then; null for nobody's. */
    public @Nullable StaffId stylist() {
        return visit.stay().stylist();
    }
}
