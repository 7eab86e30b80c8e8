package rinsebell.floor.basin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How many pairs of hands there are at the basins, from instant to instant.
 *
 * @param known whether anybody said; where nobody did, hands are not counted
 * @param steps from each instant on so many, in the order of time; before the first none
 */
public record Hands(boolean known, List<Step> steps) {
    /** Nobody said who is at the basins. */
    public static final Hands UNKNOWN = new Hands(false, List.of());

    /**
     * @param from reached counts
     * @param count zero or more
     */
    public record Step(Instant from, int count) {}

    public Hands {
        steps = List.copyOf(steps);
        for (var i = 1; i < steps.size(); i++) {
            if (!steps.get(i - 1).from().isBefore(steps.get(i).from())) {
                throw new IllegalArgumentException("not in the order of time: " + steps);
            }
        }
    }

    /** As many at any time. */
    public static Hands always(int count) {
        return of(List.of(new Step(Instant.MIN, count)));
    }

    public static Hands of(List<Step> steps) {
        return new Hands(true, steps);
    }

    /** How many there are at an instant; {@link Integer#MAX_VALUE} where nobody said. */
    public int at(Instant instant) {
        if (!known) {
            return Integer.MAX_VALUE;
        }
        var count = 0;
        for (var step : steps) {
            if (step.from().isAfter(instant)) {
                break;
            }
            count = step.count();
        }
        return count;
    }

    /** One pair fewer in a stretch of time; never fewer than none. */
    public Hands without(Instant from, Instant until) {
        if (!known || !until.isAfter(from)) {
            return this;
        }
        var next = new ArrayList<Step>();
        var edges = new ArrayList<>(steps.stream().map(Step::from).toList());
        edges.add(from);
        edges.add(until);
        edges.stream().distinct().sorted().forEach(edge -> {
            var taken = !edge.isBefore(from) && edge.isBefore(until) ? 1 : 0;
            next.add(new Step(edge, Math.max(0, at(edge) - taken)));
        });
        return of(next);
    }
}
