package rinsebell.planner;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * A part of a sum.
 *
 * @param weight how often it counts
 * @param figure what counts
 */
record Term(int weight, Figure figure) {
    /** A variable that is never smaller than the figure, and as small where it is minimised. */
    interface Figure {
        IntVar in(Model model);
    }

    /** For an activity that starts after its due, the steps begun. */
    static Term steps(int weight, Activity activity, int due, int step) {
        return new Term(weight, model -> {
            var start = activity.start;
            var steps = model.intVar("steps", steps(start.getLB(), due, step), steps(start.getUB(), due, step), true);
            if (!steps.isInstantiated()) {
                model.scalar(new IntVar[] {steps, start}, new int[] {step, -1}, ">=", -due)
                        .post();
            }
            return steps;
        });
    }

    private static int steps(int start, int due, int step) {
        return (Math.max(0, start - due) + step - 1) / step;
    }

    /** How far from its best start an activity is. */
    static Term distance(int weight, Activity activity) {
        return new Term(weight, model -> {
            var start = activity.start;
            var low = Math.max(0, Math.max(start.getLB() - activity.wanted, activity.wanted - start.getUB()));
            var high = Math.max(Math.abs(start.getLB() - activity.wanted), Math.abs(start.getUB() - activity.wanted));
            var distance = model.intVar("distance", low, high, true);
            model.arithm(start, "-", distance, "<=", activity.wanted).post();
            model.arithm(start, "+", distance, ">=", activity.wanted).post();
            return distance;
        });
    }

    /** One if a claim is given up. */
    static Term given(int weight, BoolVar claim) {
        return new Term(weight, model -> claim.not());
    }

    /** The same whatever is scheduled. */
    static Term constant(int weight, int figure) {
        return new Term(weight, model -> model.intVar(figure));
    }
}
