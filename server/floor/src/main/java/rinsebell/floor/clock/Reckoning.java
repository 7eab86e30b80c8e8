package rinsebell.floor.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Span;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.Visit;

/** Reckons the instants of one application. */
final class Reckoning {
    private final Visit visit;
    private final Application application;
    private final Policy policy;
    private final Terms terms;
    private final Instant mixedAt;

    Reckoning(Floor floor, Visit visit, Application application) {
        this.visit = visit;
        this.application = application;
        this.policy = floor.salon().policy();
        var bowl = floor.bowl(application.bowl());
        this.terms = Terms.of(bowl.orElse(null), floor.salon());
        this.mixedAt = bowl.map(Bowl::mixedAt).orElse(application.firstOn().minus(Timing.MIXING_ASSUMED));
    }

    Timing timing() {
        var limits = Stream.of(discomfort(), decided(), usableEnd(), developed(), longestOn(), planned())
                .flatMap(Optional::stream)
                .toList();
        return new Timing(application, terms, mixedAt, readyFrom(), limits);
    }

    private @Nullable Instant readyFrom() {
        var saidSo =
                application.checks().stream().filter(StrandCheck::saysRinse).map(StrandCheck::at);
        var byDirections = application.lastOn() == null
                ? Optional.<Instant>empty()
                : terms.develops().stream().map(one -> reached(one, Span::from)).max(Comparator.naturalOrder());
        return Stream.concat(saidSo, byDirections.stream())
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    private Optional<Limit> usableEnd() {
        var rinses = terms.active() != null && terms.active().atEnd() == Active.AtEnd.RINSE;
        return terms.usableUntil(mixedAt).filter(end -> rinses).map(end -> new Limit(Limit.Why.USABLE_END, end, true));
    }

    private Optional<Limit> developed() {
        return terms.develops().stream()
                .map(one -> reached(one, Span::to))
                .min(Comparator.naturalOrder())
                .map(at -> new Limit(Limit.Why.DEVELOPED, at, terms.hasHardDevelopment()));
    }

    private Optional<Limit> longestOn() {
        return Optional.ofNullable(terms.longestOn())
                .map(longest -> new Limit(Limit.Why.LONGEST_ON, sectionFirstOn().plus(longest), true));
    }

    /** The section's first first-on since it was last rinsed: what a bowl began counts on, covered or wiped off. */
    private Instant sectionFirstOn() {
        return section()
                .filter(one -> !isRinsed(one))
                .map(Application::firstOn)
                .min(Comparator.naturalOrder())
                .orElse(application.firstOn());
    }

    /** Water was on it, or on its section since it was wiped off. */
    private boolean isRinsed(Application one) {
        var ending = one.ending();
        return ending != null
                && ending.isOff()
                && section()
                        .flatMap(other -> Stream.ofNullable(other.ending()))
                        .anyMatch(other ->
                                other.how() == Ending.How.RINSED && !other.at().isBefore(ending.at()));
    }

    private Stream<Application> section() {
        return visit.applications().stream().filter(one -> one.area() == application.area());
    }

    private Optional<Limit> planned() {
        return Optional.ofNullable(application.planned())
                .map(time -> countingStart().plus(time))
                .filter(at -> application.checks().stream().noneMatch(check -> looksPast(check, at)))
                .map(at -> new Limit(Limit.Why.PLANNED, at, false));
    }

    private static boolean looksPast(StrandCheck check, Instant planned) {
        return check.decision() instanceof CheckDecision.LookAgain again
                && check.at().plus(again.after()).isAfter(planned);
    }

    private Optional<Limit> decided() {
        var strand = application.lastCheck().filter(StrandCheck::saysRinse).map(StrandCheck::at);
        var scalp = visit.lastScalpCheck()
                .filter(check -> check.saysRinse() && !check.at().isBefore(application.firstOn()))
                .map(ScalpCheck::at);
        return Stream.concat(strand.stream(), scalp.stream())
                .min(Comparator.naturalOrder())
                .map(at -> new Limit(
                        Limit.Why.DECIDED,
                        at.plus(policy.working().before(application.area().isFoils())),
                        terms.hasHardDevelopment()));
    }

    private Optional<Limit> discomfort() {
        return visit.severeComplaints()
                .filter(complaint -> !complaint.at().isBefore(application.firstOn()))
                .map(complaint -> new Limit(Limit.Why.DISCOMFORT, complaint.at(), true))
                .findFirst();
    }

    private Instant countingStart() {
        return terms.develops().stream()
                .map(one -> start(one.counted()))
                .min(Comparator.naturalOrder())
                .orElse(application.firstOn());
    }

    private Instant reached(Develops develops, Function<Span, Duration> of) {
        return new Development(develops, terms.limits()::heat, visit.heats())
                .reached(start(develops.counted()), of.apply(develops.plain()), of);
    }

    private Instant start(Develops.Counted counted) {
        if (counted == Develops.Counted.FROM_MIXING) {
            return mixedAt;
        }
        if (counted == Develops.Counted.FROM_FIRST_ON) {
            return application.firstOn();
        }
        var lastOn = application.lastOn();
        return lastOn == null ? application.firstOn().plus(policy.applying()) : lastOn;
    }
}
