package rinsebell.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.search.SearchState;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/**
 * A scheduling problem, built piece by piece and solved once: activities with releases and latest starts, resources that
 * they use for all or part of their time, machines of which each takes one, precedences, and an objective as an argument.
 * It knows nothing of hair.
 */
final class ScheduleModel {
    private final Model model = new Model("schedule");
    private final int horizon;
    private final List<Activity> activities = new ArrayList<>();
    private final List<Resource> resources = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final List<BoolVar> claims = new ArrayList<>();
    private final List<Integer> limits = new ArrayList<>();
    private final Machines machines = new Machines();

    /** @param horizon no activity starts after it that has no latest start of its own */
    ScheduleModel(int horizon) {
        this.horizon = horizon;
    }

    private record Gap(Activity first, Activity second, int gap) {}

    Activity task(int release, int duration) {
        return task(release, duration, Math.max(release, horizon));
    }

    /** The latest start must not be before the release. */
    Activity task(int release, int duration, int latestStart) {
        var index = activities.size();
        var start = model.intVar("start" + index, release, latestStart, true);
        var activity = new Activity(index, start, duration).rank(index);
        activities.add(activity);
        return activity;
    }

    Resource resource(int capacity) {
        var resource = new Resource(capacity);
        resources.add(resource);
        return resource;
    }

    /** From its start to its end. */
    void demand(Resource resource, Activity activity, int amount) {
        demand(resource, activity, 0, activity.duration, amount);
    }

    /** In a stretch counted from its start, which may lie outside of what it lasts. */
    void demand(Resource resource, Activity activity, int from, int until, int amount) {
        if (until > from && amount > 0) {
            resource.uses.add(new Resource.Use(activity, from, until, amount));
        }
    }

    /** So much of a resource is not there in a stretch of time. */
    void block(Resource resource, int from, int until, int amount) {
        if (until > from && amount > 0) {
            resource.blocks.add(new Resource.Block(from, until, amount));
        }
    }

    /** The second starts when the first has ended, or later. */
    void precedes(Activity first, Activity second) {
        gaps.add(new Gap(first, second, first.duration));
    }

    /** The second starts when the first has started, or later. */
    void startsBefore(Activity first, Activity second) {
        gaps.add(new Gap(first, second, 0));
    }

    /** It takes one of some machines, of which each does one thing at a time. */
    void oneOf(Activity activity, int[] numbers, int preferred) {
        activity.machine = model.intVar("machine" + activity.index, numbers);
        activity.preferred = preferred;
        if (activity.duration > 0) {
            machines.resource.uses.add(new Resource.Use(activity, 0, activity.duration, 1));
        }
    }

    void blockMachine(int number, int from, int until) {
        if (until > from) {
            machines.resource.blocks.add(new Resource.Block(from, until, 1));
            machines.blocked.add(number);
        }
    }

    /**
     * Something that is worth having: that an activity starts in a span, on a machine.
     *
     * @return true where it does
     */
    BoolVar claim(Activity activity, int from, int until, int number) {
        var claim = model.boolVar("claim" + activity.index);
        var start = activity.start;
        model.scalar(new IntVar[] {start, claim}, new int[] {1, start.getLB() - from}, ">=", start.getLB())
                .post();
        model.scalar(new IntVar[] {start, claim}, new int[] {1, start.getUB() - until}, "<=", start.getUB())
                .post();
        if (activity.machine != null) {
            var there = model.boolVar();
            model.reifyXeqC(activity.machine, number, there);
            model.arithm(claim, "<=", there).post();
        }
        claims.add(claim);
        return claim;
    }

    /** A figure that must not be more than so much. */
    void limit(Objective figure, int most) {
        model.arithm(figure.in(model, activities), "<=", most).post();
    }

    /** It starts in a span, both ends included. */
    void within(Activity activity, int from, int until) {
        limits.add(from);
        limits.add(until);
        model.arithm(activity.start, ">=", from).post();
        model.arithm(activity.start, "<=", until).post();
    }

    /** The best schedule that is found; best of all where the search was complete. */
    Outcome minimise(Objective objective, Limit limit) {
        return minimise(objective, IntVar.MAX_INT_BOUND, limit);
    }

    /** The same, and nothing where there is none with so much or less. */
    Outcome minimise(Objective objective, int most, Limit limit) {
        var figure = objective.in(model, activities);
        model.arithm(figure, "<=", most).post();
        post();
        var solver = model.getSolver();
        try {
            solver.propagate();
        } catch (ContradictionException e) {
            return Outcome.none(true, Integer.MAX_VALUE);
        }
        var bound = figure.getLB();
        model.setObjective(Model.MINIMIZE, figure);
        search();
        solver.limitTime(Math.max(1, limit.millis()));
        if (limit.fails() < Long.MAX_VALUE) {
            solver.limitFail(limit.fails());
        }
        return run(figure, bound);
    }

    private Outcome run(IntVar figure, int bound) {
        var best = Outcome.none(false, bound);
        var solver = model.getSolver();
        while (solver.solve()) {
            best = new Outcome(true, false, figure.getValue(), bound, starts(), machines());
            if (best.value() <= bound) {
                break;
            }
        }
        var ended = solver.getMeasures().getSearchState() == SearchState.TERMINATED;
        var complete = ended || (best.found() && best.value() <= bound);
        return new Outcome(
                best.found(),
                complete,
                best.value(),
                complete ? (best.found() ? best.value() : Integer.MAX_VALUE) : bound,
                best.starts(),
                best.machines());
    }

    private List<Integer> starts() {
        return activities.stream().map(one -> one.start.getValue()).toList();
    }

    private List<Integer> machines() {
        return activities.stream()
                .map(one -> one.machine == null ? 0 : one.machine.getValue())
                .toList();
    }

    private void post() {
        for (var gap : gaps) {
            model.arithm(gap.second().start, "-", gap.first().start, ">=", gap.gap())
                    .post();
        }
        resources.forEach(this::post);
        machines.post();
    }

    private void search() {
        var contacts = new Contacts(activities.size(), grain());
        resources.forEach(contacts::add);
        contacts.add(machines.resource);
        gaps.forEach(gap -> contacts.addGap(gap.first(), gap.second(), gap.gap()));
        var starts = activities.stream().map(one -> one.start).toArray(IntVar[]::new);
        var first = new EarliestFirst(starts, claims, activities, contacts);
        var rest = model.retrieveIntVars(true);
        model.getSolver()
                .setSearch(
                        starts.length == 0 ? Search.inputOrderLBSearch(rest) : first, Search.inputOrderLBSearch(rest));
    }

    /** What all that a start can come from is a multiple of: releases, wanted starts, lengths and what is blocked. */
    private int grain() {
        if (!claims.isEmpty()) {
            return 1;
        }
        var all =
                Stream.concat(resources.stream(), Stream.of(machines.resource)).toList();
        var lengths = IntStream.concat(
                activities.stream().flatMapToInt(Activity::marks), all.stream().flatMapToInt(Resource::marks));
        var limit = limits.stream().mapToInt(one -> one).reduce(0, ScheduleModel::divisor);
        return Math.max(1, lengths.reduce(limit, ScheduleModel::divisor));
    }

    private static int divisor(int one, int other) {
        return other == 0 ? Math.abs(one) : divisor(other, one % other);
    }

    private void post(Resource resource) {
        if (resource.uses.isEmpty()) {
            return;
        }
        var tasks = new ArrayList<Task>();
        var heights = new ArrayList<IntVar>();
        for (var use : resource.uses) {
            var begin = use.from() == 0 ? use.activity().start : model.offset(use.activity().start, use.from());
            tasks.add(new Task(begin, use.until() - use.from()));
            heights.add(model.intVar(use.amount()));
        }
        for (var block : profile(resource)) {
            tasks.add(new Task(model.intVar(block.from()), block.until() - block.from()));
            heights.add(model.intVar(block.amount()));
        }
        cumulative(tasks, heights, resource.capacity).post();
    }

    private Constraint cumulative(List<Task> tasks, List<IntVar> heights, int capacity) {
        return model.cumulative(
                tasks.toArray(Task[]::new),
                heights.toArray(IntVar[]::new),
                model.intVar(capacity),
                true,
                capacity == 1);
    }

    /** The blocks laid on each other, so that none overlap; never more than there is. */
    private static List<Resource.Block> profile(Resource resource) {
        var changes = new TreeMap<Integer, Integer>();
        for (var block : resource.blocks) {
            changes.merge(block.from(), block.amount(), Integer::sum);
            changes.merge(block.until(), -block.amount(), Integer::sum);
        }
        var profile = new ArrayList<Resource.Block>();
        var amount = 0;
        var from = 0;
        for (var change : changes.entrySet()) {
            if (amount > 0 && change.getKey() > from) {
                profile.add(new Resource.Block(from, change.getKey(), Math.min(amount, resource.capacity)));
            }
            amount += change.getValue();
            from = change.getKey();
        }
        return profile;
    }

    /** Machines that each do one thing at a time. */
    private final class Machines {
        private final Resource resource = new Resource(1);

        /** The number of the machine of each block. */
        private final List<Integer> blocked = new ArrayList<>();

        void post() {
            if (resource.uses.isEmpty()) {
                return;
            }
            var first = resource.uses.stream().map(use -> use.activity().start);
            var then = resource.blocks.stream().map(block -> model.intVar(block.from()));
            var machine = resource.uses.stream().map(use -> machine(use.activity()));
            var blockedOnes = blocked.stream().map(model::intVar);
            var widths = IntStream.concat(
                            resource.uses.stream().mapToInt(Resource.Use::until),
                            resource.blocks.stream().mapToInt(block -> block.until() - block.from()))
                    .mapToObj(model::intVar)
                    .toArray(IntVar[]::new);
            var heights = IntStream.range(0, widths.length)
                    .mapToObj(i -> model.intVar(1))
                    .toArray(IntVar[]::new);
            model.diffN(
                            Stream.concat(first, then).toArray(IntVar[]::new),
                            Stream.concat(machine, blockedOnes).toArray(IntVar[]::new),
                            widths,
                            heights,
                            false)
                    .post();
        }

        @SuppressWarnings("NullAway") // Only activities with machines are here.
        private static IntVar machine(Activity activity) {
            return activity.machine;
        }
    }
}
