package rinsebell.floor.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Checks;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.HeatSpan;
import rinsebell.floor.visit.Visit;

/** When strand and scalp are due to be looked at. */
public final class Looks {
    private Looks() {}

    /**
     * A look that is due.
     *
     * @param at when; reached counts as due
     * @param anchor the number of the fact that it counts from: the last look, or first-on
     */
    public record Due(Instant at, long anchor) {}

    /** The next look at a strand of this application; empty when none is asked for, or rinsing was decided. */
    public static Optional<Due> strand(Timing timing, Visit visit) {
        var application = timing.application();
        var last = application.lastCheck();
        if (!application.isLive() || last.filter(check -> check.saysRinse()).isPresent()) {
            return Optional.empty();
        }
        var from = last.map(check -> new Due(check.at(), check.seq()))
                .orElse(new Due(application.firstOn(), application.id().value()));
        var checks = timing.terms().checks();
        return next(from, checks.strand(false), checks.strand(true), visit.heat())
                .map(due ->
                        sooner(due, from, last.map(check -> check.decision()).orElse(null)));
    }

    /** The next look at the scalp; empty when nothing that asks for it is on scalp. */
    public static Optional<Due> scalp(List<Timing> timings, Visit visit) {
        var onScalp = timings.stream()
                .filter(timing ->
                        timing.application().isLive() && timing.application().isOnScalp())
                .toList();
        var checks = onScalp.stream().map(timing -> timing.terms().checks()).reduce(Checks.NONE, Checks::and);
        return firstScalpBase(onScalp, visit)
                .flatMap(from -> next(from, checks.scalp(false), checks.scalp(true), visit.heat())
                        .map(due -> sooner(due, from, scalpDecision(visit, from))));
    }

    private static Optional<Due> firstScalpBase(List<Timing> onScalp, Visit visit) {
        var firstOn = onScalp.stream()
                .map(Timing::application)
                .min(java.util.Comparator.comparing(Application::firstOn))
                .map(application ->
                        new Due(application.firstOn(), application.id().value()));
        return firstOn.map(due -> visit.lastScalpCheck()
                .filter(check -> !check.at().isBefore(due.at()))
                .map(check -> new Due(check.at(), check.seq()))
                .orElse(due));
    }

    private static @Nullable CheckDecision scalpDecision(Visit visit, Due from) {
        return visit.lastScalpCheck()
                .filter(check -> check.seq() == from.anchor())
                .map(check -> check.decision())
                .orElse(null);
    }

    /** Heat that begins between two looks brings the next one forward, counted from when it began. */
    private static Optional<Due> next(
            Due from, @Nullable Duration plain, @Nullable Duration heated, Optional<HeatSpan> heat) {
        var cool = Stream.ofNullable(plain).map(from.at()::plus);
        var warm = heat.stream()
                .flatMap(span -> Stream.ofNullable(heated).map(Instants.later(from.at(), span.from())::plus));
        return Stream.concat(cool, warm).min(Instant::compareTo).map(at -> new Due(at, from.anchor()));
    }

    /** "Look again" may shorten the directions' interval, never lengthen it. */
    private static Due sooner(Due due, Due from, @Nullable CheckDecision decision) {
        if (decision instanceof CheckDecision.LookAgain again) {
            var wished = from.at().plus(again.after());
            return wished.isBefore(due.at()) ? new Due(wished, due.anchor()) : due;
        }
        return due;
    }
}
