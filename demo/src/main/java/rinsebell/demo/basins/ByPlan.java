package rinsebell.demo.basins;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rinsebell.demo.basins.Sight.Stage;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Planner;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.basin.Verifier;

/** By a plan, which is made anew at each instant at which anything can change. It keeps what it knows of one day. */
final class ByPlan implements Way {
    /** Nobody is held longer before mixing, in seconds; then it goes on all the same. House number. */
    private static final long LONGEST_HELD = 30 * 60;

    private static final long MINUTE = 60;

    private final Planner planner;
    private final boolean asksBeforeMixing;
    private final Map<Integer, Long> held = new HashMap<>();
    private Plan plan = Plan.EMPTY;
    private long plannedAt = -1;

    ByPlan(Planner planner, boolean asksBeforeMixing) {
        this.planner = planner;
        this.asksBeforeMixing = asksBeforeMixing;
    }

    @Override
    public Optional<Step> next(Sight sight) {
        if (sight.freeHands() == 0 || !canAnythingBegin(sight)) {
            return Optional.empty();
        }
        if (plannedAt != sight.now()) {
            plan = made(new Outline(sight).station(List.of()));
            plannedAt = sight.now();
        }
        return water(sight).or(() -> before(sight));
    }

    /** Spares a plan of which nothing could be begun now: no basin is free in time for anybody. */
    private static boolean canAnythingBegin(Sight sight) {
        var free = new Estimate(sight).firstFree();
        return sight.heads().stream().anyMatch(head -> switch (head.stage()) {
            case ON -> Math.max(free, head.ready()) <= sight.now() + head.kind().before();
            case PREPARED -> Math.max(free, head.ready()) <= sight.now();
            default -> false;
        });
    }

    private Plan made(Station station) {
        var made = planner.plan(station);
        var faults = Verifier.faults(station, made);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("a plan that can't be carried out: " + faults);
        }
        return made;
    }

    private Optional<Step> water(Sight sight) {
        for (var head : sight.at(Stage.PREPARED)) {
            var turn =
                    turn(head).filter(one -> Outline.second(one.water()) <= sight.now() && sight.isFree(one.basin()));
            if (turn.isPresent()) {
                return Optional.of(new Step(head.number(), turn.get().basin()));
            }
        }
        return Optional.empty();
    }

    private Optional<Step> before(Sight sight) {
        return sight.at(Stage.ON).stream()
                .filter(head -> turn(head)
                        .filter(turn -> Outline.second(turn.begin()) <= sight.now())
                        .isPresent())
                .findFirst()
                .map(head -> new Step(head.number(), 0));
    }

    private Optional<Turn> turn(Sight.Seen head) {
        return plan.of(Outline.visit(head.number()));
    }

    /** Whether everybody is as safe with it as without; asked once a minute. */
    @Override
    public boolean mayMix(Sight sight, Head head, long waited) {
        if (!asksBeforeMixing || waited >= LONGEST_HELD) {
            return true;
        }
        var minute = sight.now() / MINUTE;
        if (held.getOrDefault(head.number(), -1L) == minute) {
            return false;
        }
        held.put(head.number(), minute);
        return isSafe(new Outline(sight), head);
    }

    private boolean isSafe(Outline outline, Head head) {
        var station = outline.station(List.of());
        var with = outline.station(List.of(outline.ifMixed(head)));
        var asked = made(with);
        return asked.isSafe()
                || Score.of(with, asked).over()
                        <= Score.of(station, made(station)).over();
    }
}
