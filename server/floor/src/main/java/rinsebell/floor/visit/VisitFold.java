package rinsebell.floor.visit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.product.Heat;

/**
 * Folds the facts of one visit, in their order, into a {@link Visit}. It takes every order and every gap: a fact about
 * an application that is not there (yet) changes nothing, since corrections may leave any such list behind.
 */
public final class VisitFold {
    private final VisitId id;
    private @Nullable Stay stay;
    private Gate gate = Gate.UNANSWERED;
    private final List<Application> applications = new ArrayList<>();
    private final List<HeatSpan> heats = new ArrayList<>();
    private final List<ScalpCheck> scalpChecks = new ArrayList<>();
    private final List<Complaint> complaints = new ArrayList<>();
    private Visit.Round round = Visit.Round.NONE;
    private Services services = Services.NONE;

    private VisitFold(VisitId id) {
        this.id = id;
    }

    /**
     * The visit that these facts tell.
     *
     * @param facts of one visit, corrections applied, sorted by (happened, seq)
     * @return empty when no arrival is among them
     */
    public static Optional<Visit> of(VisitId id, List<Fact> facts) {
        var fold = new VisitFold(id);
        // Whoever was put on before their arrival was written down did arrive: begin with the arrival, whenever.
        facts.stream().filter(VisitFold::isArrival).forEach(fold::apply);
        facts.stream().filter(fact -> !isArrival(fact)).forEach(fold::apply);
        return fold.visit();
    }

    private static boolean isArrival(Fact fact) {
        return fact.event() instanceof StayEvent.Arrived;
    }

    private void apply(Fact fact) {
        if (fact.event() instanceof VisitEvent event && (stay != null || isArrival(fact))) {
            event.applyTo(this, fact);
        }
    }

    private Optional<Visit> visit() {
        return Optional.ofNullable(stay)
                .map(known ->
                        new Visit(id, known, gate, applications, heats, scalpChecks, complaints, round, services));
    }

    void arrive(Stay arrival) {
        stay = arrival;
    }

    void stay(UnaryOperator<Stay> change) {
        if (stay != null) {
            stay = change.apply(stay);
        }
    }

    void services(UnaryOperator<Services> change) {
        services = change.apply(services);
    }

    void answer(Gate answers) {
        gate = gate.over(answers);
    }

    void putOn(Application next) {
        applications.replaceAll(one -> one.isLive() && one.area() == next.area()
                ? one.ended(new Ending(next.id().value(), Ending.How.COVERED, next.firstOn()))
                : one);
        applications.add(next);
        round = Visit.Round.NONE;
    }

    void change(ApplicationId which, UnaryOperator<Application> change) {
        applications.replaceAll(one -> one.id().equals(which) ? change.apply(one) : one);
    }

    /**
     * Ends the named applications, and what lies under them: whatever is still on the hair of the same area and went on
     * before. What went on over them is another bowl, and stays on until somebody says that it is off.
     */
    void end(Collection<ApplicationId> which, Ending ending) {
        var under = EnumSet.noneOf(Area.class);
        for (var at = applications.size() - 1; at >= 0; at--) {
            var one = applications.get(at);
            if (which.contains(one.id())) {
                under.add(one.area());
            }
            if (one.isOnHair() && under.contains(one.area())) {
                applications.set(at, one.ended(ending));
            }
        }
    }

    void heatOn(long seq, Heat heat, Instant at) {
        heatOff(at);
        heats.add(new HeatSpan(seq, heat, at, null));
    }

    void heatOff(Instant at) {
        heats.replaceAll(span -> span.isOn() ? new HeatSpan(span.seq(), span.heat(), span.from(), at) : span);
    }

    void look(ScalpCheck check) {
        scalpChecks.add(check);
    }

    void complain(Complaint complaint) {
        complaints.add(complaint);
    }

    void plan(ApplicationId which, @Nullable Duration time) {
        change(which, one -> one.planning(time));
    }

    void towelDried(Instant at) {
        round = new Visit.Round(at, round.lift(), round.stoppedAt());
    }

    void judge(Lift lift) {
        round = new Visit.Round(round.towelDriedAt(), lift, null);
    }

    void stop(Instant at) {
        round = new Visit.Round(round.towelDriedAt(), round.lift(), at);
    }
}
