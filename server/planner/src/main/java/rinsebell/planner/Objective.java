package rinsebell.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.IntVar;

/** A figure of a schedule that is to be small. */
interface Objective {
    /**
     * The figure as a variable: never smaller than what the schedule comes to, and as small where it is minimised.
     *
     * @param model where the activities live
     * @param activities all of them
     */
    IntVar in(Model model, List<Activity> activities);

    /** When the last one ends. */
    static Objective makespan() {
        return greatest(activity -> activity.duration);
    }

    /** By how much the one ends that is latest after its due; negative when all are early. */
    static Objective maxLateness(ToIntFunction<Activity> due) {
        return greatest(activity -> activity.duration - due.applyAsInt(activity));
    }

    /** When everything is over, if each is followed by a tail that asks for nothing. */
    static Objective maxWithTail(ToIntFunction<Activity> tail) {
        return greatest(activity -> activity.duration + tail.applyAsInt(activity));
    }

    private static Objective greatest(ToIntFunction<Activity> after) {
        return (model, activities) -> {
            var ends = activities.stream()
                    .map(activity -> model.offset(activity.start, after.applyAsInt(activity)))
                    .toArray(IntVar[]::new);
            var low = activities.stream().mapToInt(a -> a.start.getLB() + after.applyAsInt(a));
            var high = activities.stream().mapToInt(a -> a.start.getUB() + after.applyAsInt(a));
            var greatest =
                    model.intVar("greatest", low.max().orElse(0), high.max().orElse(0), true);
            if (ends.length > 0) {
                model.max(greatest, ends).post();
            }
            return greatest;
        };
    }

    /** So many of each term together. */
    static Objective sum(List<Term> terms) {
        return (model, activities) -> {
            var figures = new ArrayList<IntVar>();
            var weights = new ArrayList<Integer>();
            for (var term : terms) {
                figures.add(term.figure().in(model));
                weights.add(term.weight());
            }
            return sum(
                    model, figures, weights.stream().mapToInt(weight -> weight).toArray());
        };
    }

    private static IntVar sum(Model model, List<IntVar> figures, int[] weights) {
        var low = 0L;
        var high = 0L;
        for (var i = 0; i < weights.length; i++) {
            low += (long) weights[i] * figures.get(i).getLB();
            high += (long) weights[i] * figures.get(i).getUB();
        }
        if (low > IntVar.MAX_INT_BOUND || high > Integer.MAX_VALUE / 2) {
            throw new ArithmeticException("too big a sum: " + low + " to " + high);
        }
        var sum = model.intVar("sum", (int) low, (int) Math.min(high, IntVar.MAX_INT_BOUND), true);
        if (weights.length > 0) {
            model.scalar(figures.toArray(IntVar[]::new), weights, "=", sum).post();
        }
        return sum;
    }
}
