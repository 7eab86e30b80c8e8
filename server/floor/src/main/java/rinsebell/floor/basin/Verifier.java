package rinsebell.floor.basin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Whether a plan can be carried out. It shares nothing with what makes plans, so that neither hides a mistake of the
 * other: pair by pair, and instant by instant.
 */
public final class Verifier {
    private final Station station;
    private final Plan plan;
    private final List<Fault> faults = new ArrayList<>();

    private Verifier(Station station, Plan plan) {
        this.station = station;
        this.plan = plan;
    }

    /** What can be wrong. */
    public enum Kind {
        /** A job is not in the plan, or twice, or in it and not at the station. */
        NOT_ONCE,
        /** Before the plan can begin, or before the head may be rinsed. */
        TOO_EARLY,
        /** At a basin that is out of order, or that there is not. */
        NO_BASIN,
        /** At a basin at which somebody still is, or another turn. */
        BASIN_TAKEN,
        /** More pairs of hands than there are. */
        HANDS_SHORT,
        /** One head at two basins. */
        HEAD_TWICE,
        /** Somewhere else, or in another order, than was pinned. */
        PIN_BROKEN
    }

    /**
     * @param kind what is wrong
     * @param job with whom
     */
    public record Fault(Kind kind, Job job) {}

    /** Everything that is wrong with a plan; empty when it can be carried out. Being late is no fault of a plan. */
    public static List<Fault> faults(Station station, Plan plan) {
        return new Verifier(station, plan).all();
    }

    private List<Fault> all() {
        once();
        for (var turn : plan.turns()) {
            alone(turn);
            pinned(turn);
            plan.turns().stream()
                    .filter(other -> other != turn && overlap(turn, other))
                    .forEach(other -> pair(turn, other));
        }
        hands();
        return List.copyOf(faults);
    }

    private void fault(Kind kind, Job job) {
        faults.add(new Fault(kind, job));
    }

    private void once() {
        var planned = Stream.concat(plan.turns().stream().map(Turn::job), plan.without().stream())
                .toList();
        station.jobs().stream()
                .filter(job -> planned.stream().filter(job::equals).count() != 1)
                .forEach(job -> fault(Kind.NOT_ONCE, job));
        planned.stream().filter(job -> !station.jobs().contains(job)).forEach(job -> fault(Kind.NOT_ONCE, job));
    }

    private void alone(Turn turn) {
        if (turn.water().isBefore(turn.job().earliest()) || turn.water().isBefore(station.from())) {
            fault(Kind.TOO_EARLY, turn.job());
        }
        var basin = station.basins().stream()
                .filter(one -> one.number() == turn.basin())
                .findFirst();
        if (basin.isEmpty()) {
            fault(Kind.NO_BASIN, turn.job());
        } else if (turn.water().isBefore(basin.get().freeFrom())) {
            fault(Kind.BASIN_TAKEN, turn.job());
        }
    }

    /** A pin at a basin out of order can't be kept, and is said to break elsewhere. */
    private void pinned(Turn turn) {
        station.pin(turn.job()).ifPresent(pin -> {
            var open = station.basins().stream().anyMatch(basin -> Objects.equals(basin.number(), pin.basin()));
            if (open && !Objects.equals(turn.basin(), pin.basin())) {
                fault(Kind.PIN_BROKEN, turn.job());
            }
            if (pin.before() != null && !isCircle(turn.job())) {
                plan.turns().stream()
                        .filter(other -> other.visit().equals(pin.before())
                                && !other.job().isAtOnce())
                        .filter(other -> other.water().isBefore(turn.water()))
                        .forEach(other -> fault(Kind.PIN_BROKEN, turn.job()));
            }
        });
    }

    /** Whether the pins lead from a head back to itself. */
    private boolean isCircle(Job job) {
        var at = job.visit();
        for (var steps = 0; steps <= station.pins().size(); steps++) {
            var pin = station.pins().get(at);
            if (pin == null || pin.before() == null) {
                return false;
            }
            at = pin.before();
            if (at.equals(job.visit())) {
                return true;
            }
        }
        return true;
    }

    private static boolean overlap(Turn one, Turn other) {
        return one.water().isBefore(other.end()) && other.water().isBefore(one.end());
    }

    private void pair(Turn one, Turn other) {
        if (one.basin() == other.basin()) {
            fault(Kind.BASIN_TAKEN, one.job());
        }
        if (one.visit().equals(other.visit())) {
            fault(Kind.HEAD_TWICE, one.job());
        }
    }

    /** Hands are short somewhere exactly if they are where a hold begins, or where they become fewer within one. */
    private void hands() {
        if (!station.hands().known()) {
            return;
        }
        var held = plan.turns().stream().flatMap(Verifier::holds).toList();
        for (var turn : plan.turns()) {
            var tooFew = holds(turn)
                    .flatMap(hold -> Stream.concat(
                            Stream.of(hold.from()),
                            station.hands().steps().stream()
                                    .map(Hands.Step::from)
                                    .filter(at -> at.isAfter(hold.from()) && at.isBefore(hold.until()))))
                    .anyMatch(at -> takenAt(at, held) > station.hands().at(at));
            if (tooFew) {
                fault(Kind.HANDS_SHORT, turn.job());
            }
        }
    }

    private record Held(Instant from, Instant until) {}

    private static Stream<Held> holds(Turn turn) {
        return turn.job().work().hands().stream()
                .map(hold ->
                        new Held(turn.water().plus(hold.from()), turn.water().plus(hold.until())));
    }

    private static long takenAt(Instant instant, List<Held> held) {
        return held.stream()
                .filter(hold -> !hold.from().isAfter(instant) && hold.until().isAfter(instant))
                .count();
    }
}
