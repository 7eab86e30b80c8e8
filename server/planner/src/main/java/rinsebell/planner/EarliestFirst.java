package rinsebell.planner;

import java.util.List;
import org.chocosolver.solver.ICause;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.search.strategy.assignments.DecisionOperator;
import org.chocosolver.solver.search.strategy.assignments.DecisionOperatorFactory;
import org.chocosolver.solver.search.strategy.decision.Decision;
import org.chocosolver.solver.search.strategy.strategy.AbstractStrategy;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;

/**
 * Claims first, then starts: whoever can begin first does so as near to its best start as it can, or else at one at which
 * something stops it; then its machine.
 */
final class EarliestFirst extends AbstractStrategy<IntVar> {
    private final List<BoolVar> claims;
    private final List<Activity> activities;
    private final Contacts contacts;

    EarliestFirst(IntVar[] starts, List<BoolVar> claims, List<Activity> activities, Contacts contacts) {
        super(starts);
        this.claims = claims;
        this.activities = activities;
        this.contacts = contacts;
    }

    @Override
    public @Nullable Decision<IntVar> getDecision() {
        for (var claim : claims) {
            if (!claim.isInstantiated()) {
                return makeIntDecision(claim, 1);
            }
        }
        var next = next();
        return next == null ? null : decide(next);
    }

    private @Nullable Activity next() {
        Activity next = null;
        for (var activity : activities) {
            if (activity.start.isInstantiated()) {
                if (activity.machine != null && !activity.machine.isInstantiated()) {
                    return activity;
                }
            } else if (next == null || isBefore(activity, next)) {
                next = activity;
            }
        }
        return next;
    }

    private static boolean isBefore(Activity one, Activity other) {
        var earliest = Integer.compare(one.start.getLB(), other.start.getLB());
        return earliest < 0 || (earliest == 0 && one.rank < other.rank);
    }

    private Decision<IntVar> decide(Activity activity) {
        var start = activity.start;
        if (start.isInstantiated()) {
            return machine(activity);
        }
        if (start.getLB() >= activity.wanted) {
            return decisionPath.makeIntDecision(start, new AtFirst(activity), start.getLB());
        }
        return start.getUB() <= activity.wanted
                ? decisionPath.makeIntDecision(start, new AtLast(activity), start.getUB())
                : decisionPath.makeIntDecision(start, DecisionOperatorFactory.makeIntReverseSplit(), activity.wanted);
    }

    @SuppressWarnings("NullAway") // It is asked only for one that has a machine.
    private Decision<IntVar> machine(Activity activity) {
        var machine = activity.machine;
        var first = machine.contains(activity.preferred) ? activity.preferred : machine.getLB();
        return makeIntDecision(machine, first);
    }

    /** At its earliest start; or else at the next at which something stops it from going earlier. */
    private final class AtFirst implements DecisionOperator<IntVar> {
        private final transient Activity activity;

        AtFirst(Activity activity) {
            this.activity = activity;
        }

        @Override
        public boolean apply(IntVar start, int value, ICause cause) throws ContradictionException {
            return start.instantiateTo(value, cause);
        }

        @Override
        public boolean unapply(IntVar start, int value, ICause cause) throws ContradictionException {
            return start.updateLowerBound(contacts.after(activity, value), cause);
        }

        @Override
        public DecisionOperator<IntVar> opposite() {
            throw new UnsupportedOperationException("only searches that go forward and back use it");
        }
    }

    /** At its latest start; or else at the one before it at which something stops it from going later. */
    private final class AtLast implements DecisionOperator<IntVar> {
        private final transient Activity activity;

        AtLast(Activity activity) {
            this.activity = activity;
        }

        @Override
        public boolean apply(IntVar start, int value, ICause cause) throws ContradictionException {
            return start.instantiateTo(value, cause);
        }

        @Override
        public boolean unapply(IntVar start, int value, ICause cause) throws ContradictionException {
            return start.updateUpperBound(contacts.before(activity, value), cause);
        }

        @Override
        public DecisionOperator<IntVar> opposite() {
            throw new UnsupportedOperationException("only searches that go forward and back use it");
        }
    }
}
