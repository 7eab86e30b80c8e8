package rinsebell.demo.basins;

import java.util.function.Supplier;
import rinsebell.app.time.MachineTime;
import rinsebell.floor.basin.Dispatch;
import rinsebell.planner.BasinPlanner;
import rinsebell.planner.Budget;

/** The ways that are compared. */
enum Ways {
    FIRST_COME("first come, first served", InOrder::firstCome),
    EARLIEST("earliest rinse-by first", InOrder::earliestRinseBy),
    AS_SOON("the same, light or not", InOrder::asSoonAsItMay),
    PLAN("the plan", () -> new ByPlan(new Dispatch(), false)),
    ASKED("the plan, asked before mixing", () -> new ByPlan(new Dispatch(), true)),
    /** What it makes depends on the machine's pace. */
    SOLVER("the solver's plan", () -> new ByPlan(solver(), false));

    /** For each figure of a plan, in milliseconds: a day has hundreds of plans. */
    private static final long MILLIS = 5;

    private final String words;
    private final Supplier<Way> made;

    Ways(String words, Supplier<Way> made) {
        this.words = words;
        this.made = made;
    }

    private static BasinPlanner solver() {
        return new BasinPlanner(Budget.each(MILLIS), new MachineTime()::monotonicNanos);
    }

    /** One day, lived this way. */
    Lived live(Day day) {
        return Lived.of(day, World.live(day, way()));
    }

    /** As it begins a day. */
    Way way() {
        return made.get();
    }

    @Override
    public String toString() {
        return words;
    }
}
