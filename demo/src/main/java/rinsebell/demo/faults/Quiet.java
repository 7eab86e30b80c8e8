package rinsebell.demo.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import rinsebell.floor.Command;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;

/** What {@code answered.js} does: what a device has answered itself is quiet on it at once, for a while. */
final class Quiet {
    private static final long RINSED = 600_000;
    private static final long LOOK = 180_000;
    private static final long AS_THE_HOUSE_SAYS = -1;

    private final Parts parts;
    private List<Answered> answered = new ArrayList<>();

    private record Answered(BiPredicate<Bell, Plan> is, long millis, double since, double own) {}

    Quiet(Parts parts) {
        this.parts = parts;
    }

    /** The server knows what it was told. */
    void forget() {
        answered.clear();
    }

    /**
     * @param since the salon's time at which it was pressed
     * @param own the device's own count then
     */
    void note(Command command, double since, double own) {
        if (command instanceof Acknowledge heard) {
            add((bell, plan) -> isOfRound(bell, heard, plan), AS_THE_HOUSE_SAYS, since, own);
        } else if (command instanceof Rinse rinse) {
            add((bell, plan) -> rinse.visit().equals(bell.visit()) && !isHurt(bell), RINSED, since, own);
        } else if (command instanceof Report report) {
            note(report.visit(), report.events().get(0), since, own);
        }
    }

    private void note(VisitId visit, VisitEvent event, double since, double own) {
        if (event instanceof LookEvent.StrandChecked strand) {
            looked(visit, BellKind.STRAND_CHECK, strand.decision(), since, own);
        } else if (event instanceof LookEvent.ScalpChecked scalp) {
            looked(visit, BellKind.SCALP_CHECK, scalp.decision(), since, own);
        }
    }

    private void looked(
            VisitId visit,
            BellKind look,
            @org.jspecify.annotations.Nullable CheckDecision decision,
            double since,
            double own) {
        var millis = decision instanceof CheckDecision.LookAgain again
                ? again.after().toMillis()
                : LOOK;
        add((bell, plan) -> visit.equals(bell.visit()) && parts.lookQuiets(look, bell.kind()), millis, since, own);
    }

    private void add(BiPredicate<Bell, Plan> is, long millis, double since, double own) {
        answered.removeIf(one -> since - one.since >= RINSED);
        answered.add(new Answered(is, millis, since, own));
    }

    private static boolean isHurt(Bell bell) {
        return bell.kind() == BellKind.BURNING || bell.kind() == BellKind.HOT_FOIL;
    }

    private static boolean isOfRound(Bell bell, Acknowledge heard, Plan plan) {
        return bell.key().equals(heard.bell())
                || plan.bells().stream()
                        .anyMatch(other -> other.key().equals(heard.bell())
                                && other.round().equals(bell.round()));
    }

    /**
     * @param at the salon's time
     * @param own the device's own count
     */
    boolean is(Turn turn, Plan plan, double at, double own) {
        return answered.stream()
                .anyMatch(one -> turn.ring().from().toEpochMilli() <= one.since
                        && at < one.since + millis(one, turn, plan)
                        && parts.isQuietByOwnCount(own - one.own, millis(one, turn, plan))
                        && one.is.test(turn.bell(), plan));
    }

    private long millis(Answered one, Turn turn, Plan plan) {
        return parts.quietMillis(one.millis == AS_THE_HOUSE_SAYS ? again(turn, plan) : one.millis);
    }

    private static long again(Turn turn, Plan plan) {
        var house = plan.snapshot().floor().salon().policy().ringing();
        return turn.ring().stage().priority().again(house).toMillis();
    }

    boolean isEmpty() {
        return answered.isEmpty();
    }
}
