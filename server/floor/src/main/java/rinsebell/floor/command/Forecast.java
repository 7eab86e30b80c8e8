package rinsebell.floor.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Supposed;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Visit;

/** What would come of a bowl if all of it went on a head as soon as it is mixed: said before it is. */
final class Forecast {
    private final Floor floor;
    private final Visit visit;
    private final Instant at;

    private Forecast(Floor floor, Visit visit, Instant at) {
        this.floor = floor;
        this.visit = visit;
        this.at = at;
    }

    /** What to be careful about; nothing while nobody knows what is in the bowl. */
    static List<Reason> of(Floor floor, Visit visit, List<Portion> portions, Instant at) {
        return portions.isEmpty() ? List.of() : new Forecast(floor, visit, at).cautions(portions);
    }

    private List<Reason> cautions(List<Portion> portions) {
        var supposed = new Supposed(floor, at);
        var on = supposed.puts(supposed.mixes(portions, BowlReason.NEXT_AREA, visit.id()), visit.id());
        var next = supposed.floor();
        return next.visit(visit.id()).map(then -> cautions(next, then, on)).orElse(List.of());
    }

    private static List<Reason> cautions(Floor next, Visit then, ApplicationId on) {
        var found = new ArrayList<Reason>();
        HeadTiming.of(next, then).apart().ifPresent(apart -> found.add(apart(next, apart)));
        if (then.application(on)
                .filter(one -> Timing.of(next, then, one).isReadyTooLate())
                .isPresent()) {
            found.add(Reason.of(ReasonCode.READY_AFTER_RINSE_BY));
        }
        return found;
    }

    private static Reason apart(Floor next, HeadTiming.Apart apart) {
        return Reason.of(
                ReasonCode.NO_COMMON_RINSE,
                name(next, apart.first()),
                apart.by(),
                name(next, apart.last()),
                apart.ready());
    }

    /** What does the work in its bowl is weighed first. */
    private static String name(Floor floor, Application application) {
        return floor.bowl(application.bowl()).stream()
                .flatMap(bowl -> bowl.portions().stream())
                .findFirst()
                .flatMap(portion -> floor.salon()
                        .product(portion.product())
                        .map(product -> product.directions(portion.edition()).name()))
                .orElse("");
    }
}
