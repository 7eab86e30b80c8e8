package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Services;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.WorkEvent;

/** How long things took on a floor, told from its facts. What nobody recorded is left out, never guessed. */
public final class Measured {
    /** What is recorded within that was typed in afterwards, or is a slip. */
    private static final Duration SHORTEST = Duration.ofSeconds(30);

    private static final Duration LONGEST = Duration.ofHours(2);
    private static final int THOUSANDTHS = 1_000;

    private final Floor floor;
    private final Map<Stretch, List<Integer>> found = new EnumMap<>(Stretch.class);

    private Measured(Floor floor) {
        this.floor = floor;
    }

    /** Of these visits, in the unit of each {@link Stretch}. */
    public static Map<Stretch, List<Integer>> of(Floor floor, List<Visit> visits) {
        var measured = new Measured(floor);
        visits.stream().sorted(Comparator.comparing(Visit::begin)).forEach(measured::visit);
        return measured.found;
    }

    private void visit(Visit visit) {
        visit.applications().forEach(application -> application(visit, application));
        for (var done : visit.services().done()) {
            done.until().ifPresent(until -> seconds(stretch(done.service()), done.from(), until));
            waiting(visit, done);
        }
        var left = visit.stay().leftAt();
        if (left != null) {
            ends(visit).max(Comparator.naturalOrder()).ifPresent(last -> seconds(Stretch.SETTLING, last, left));
        }
    }

    /** Before a service that somebody saw begin; at once is a length too. */
    private void waiting(Visit visit, Services.Done next) {
        if (!next.until().filter(next.from()::equals).isPresent()) {
            ends(visit)
                    .filter(end -> !end.isAfter(next.from()))
                    .max(Comparator.naturalOrder())
                    .map(end -> Duration.between(end, next.from()))
                    .filter(took -> took.compareTo(LONGEST) <= 0)
                    .ifPresent(took -> add(Stretch.WAITING, took.toSeconds()));
        }
    }

    private static Stretch stretch(Service service) {
        return service == Service.CUT ? Stretch.CUT : Stretch.BLOW_DRY;
    }

    private void application(Visit visit, Application application) {
        var last = application.lastOn();
        if (last != null) {
            seconds(Stretch.APPLYING, application.firstOn(), last);
        }
        var ending = application.ending();
        if (ending == null || ending.how() != Ending.How.RINSED) {
            return;
        }
        if (isToner(application)) {
            seconds(Stretch.TONER, application.firstOn(), ending.at());
        } else {
            developing(visit, application, Instants.earlier(ending.at(), decided(application)));
        }
        rinsing(visit, application, ending.at());
    }

    private boolean isToner(Application application) {
        return floor.bowl(application.bowl())
                .map(Bowl::reason)
                .filter(BowlReason.TONE::equals)
                .isPresent();
    }

    /** By when somebody decided that water should be on, with the work before the basin. */
    private Instant decided(Application application) {
        return application
                .lastCheck()
                .filter(StrandCheck::saysRinse)
                .map(check -> check.at()
                        .plus(floor.salon()
                                .policy()
                                .working()
                                .before(application.area().isFoils())))
                .orElse(Instant.MAX);
    }

    /** Against the rinse-by of the directions: what a person decided is what is to be learned. */
    private void developing(Visit visit, Application application, Instant due) {
        Timing.of(floor, visit, application).limits().stream()
                .filter(limit -> limit.why() == Limit.Why.USABLE_END
                        || limit.why() == Limit.Why.DEVELOPED
                        || limit.why() == Limit.Why.LONGEST_ON)
                .map(Limit::at)
                .filter(at -> at.isAfter(application.firstOn()))
                .findFirst()
                .ifPresent(by -> add(
                        Stretch.DEVELOPING,
                        THOUSANDTHS
                                * Duration.between(application.firstOn(), due).toSeconds()
                                / Duration.between(application.firstOn(), by).toSeconds()));
    }

    /** Until the next thing that is done with this head. */
    private void rinsing(Visit visit, Application application, Instant water) {
        rinseEnd(visit, water)
                .ifPresent(end ->
                        seconds(application.area().isFoils() ? Stretch.RINSING_FOILS : Stretch.RINSING, water, end));
    }

    private Optional<Instant> rinseEnd(Visit visit, Instant water) {
        return floor.standing(rinsebell.floor.Stream.visit(visit.id())).stream()
                .filter(fact -> fact.happened().isAfter(water) && endsRinse(fact))
                .map(Fact::happened)
                .min(Comparator.naturalOrder());
    }

    private static boolean endsRinse(Fact fact) {
        return fact.event() instanceof WorkEvent.TowelDried
                || fact.event() instanceof WorkEvent.PutOn
                || fact.event() instanceof StayEvent.Moved
                || fact.event() instanceof StayEvent.ServiceBegan;
    }

    /** When rinses and services were over. */
    private Stream<Instant> ends(Visit visit) {
        return Stream.concat(
                visit.lastOff().map(Ending::at).flatMap(off -> rinseEnd(visit, off)).stream(),
                visit.services().done().stream().flatMap(done -> done.until().stream()));
    }

    private void seconds(Stretch stretch, Instant from, Instant until) {
        var took = Duration.between(from, until);
        if (took.compareTo(SHORTEST) >= 0 && took.compareTo(LONGEST) <= 0) {
            add(stretch, took.toSeconds());
        }
    }

    private void add(Stretch stretch, long number) {
        found.computeIfAbsent(stretch, none -> new ArrayList<>())
                .add((int) Math.max(0, Math.min(10 * THOUSANDTHS, number)));
    }
}
