package rinsebell.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import rinsebell.floor.basin.Hands;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.visit.VisitId;

/**
 * Some stays of a station as a scheduling problem. Other turns stand as they are, and take their basins and hands; with
 * none of them it is a problem of which every plan holds a solution.
 */
final class StayModel {
    /** More than any work before a basin takes, in seconds: who is further away is in nobody's way. */
    private static final int BESIDE = 7_200;

    private final Station station;
    private final Pins pins;
    private final Seconds seconds;
    private final List<Job> jobs;
    private final List<Activity> stays = new ArrayList<>();
    private final boolean byBasin;
    private final ScheduleModel model = new ScheduleModel(Seconds.FAR);
    private final Resource basins;
    private final Optional<Resource> hands;
    private final Map<VisitId, Resource> heads = new HashMap<>();
    private final Map<Job, BoolVar> claims = new HashMap<>();

    /**
     * @param byBasin whether it matters who is at which basin, or only how many are
     * @param latest the latest water of each job that is worth looking at, in seconds
     */
    StayModel(Station station, Pins pins, Seconds seconds, List<Job> jobs, int[] latest, boolean byBasin) {
        this.station = station;
        this.pins = pins;
        this.seconds = seconds;
        this.jobs = jobs;
        this.byBasin = byBasin;
        this.basins = model.resource(station.basins().size());
        this.hands = station.hands().known() ? Optional.of(model.resource(most(station.hands()))) : Optional.empty();
        for (var i = 0; i < jobs.size(); i++) {
            add(jobs.get(i), latest[i]);
        }
        pins.pairs(jobs).forEach(pair -> model.startsBefore(stays.get(pair[0]), stays.get(pair[1])));
        taken();
    }

    /** From when water can be on at all, in seconds. */
    static int earliest(Station station, Seconds seconds, Job job) {
        return Math.max(seconds.up(job.earliest()), seconds.up(station.from()));
    }

    private static int most(Hands hands) {
        return hands.steps().stream().mapToInt(Hands.Step::count).max().orElse(0);
    }

    private void add(Job job, int latest) {
        var stay = model.task(
                earliest(station, seconds, job),
                Math.max(1, Seconds.up(job.work().stay())),
                latest);
        stays.add(stay);
        stay.rank(seconds.down(job.latest()));
        model.demand(basins, stay, 1);
        model.demand(head(job), stay, 1);
        for (var hold : job.work().hands()) {
            hands.ifPresent(all -> model.demand(all, stay, Seconds.down(hold.from()), Seconds.up(hold.until()), 1));
        }
        if (byBasin) {
            var told = station.announced(job);
            model.oneOf(stay, pins.basins(job), told.map(one -> one.basin()).orElse(0));
        }
    }

    private Resource head(Job job) {
        return heads.computeIfAbsent(job.visit(), visit -> model.resource(1));
    }

    private void taken() {
        for (var basin : station.basins()) {
            var until = seconds.up(basin.freeFrom());
            model.block(basins, -Seconds.FAR, until, 1);
            if (byBasin) {
                model.blockMachine(basin.number(), -Seconds.FAR, until);
            }
        }
        hands.ifPresent(this::hands);
    }

    /** What is not there of the most that ever is. */
    private void hands(Resource all) {
        var from = -2 * Seconds.FAR;
        var count = 0;
        for (var step : station.hands().steps()) {
            var until = step.count() < count ? seconds.down(step.from()) : seconds.up(step.from());
            model.block(all, from, Math.max(from, until), all.capacity - count);
            from = Math.max(from, until);
            count = step.count();
        }
        model.block(all, from, 2 * Seconds.FAR, all.capacity - count);
    }

    /** Turns that stand. */
    void keep(List<Turn> turns) {
        var from = stays.stream().mapToInt(stay -> stay.start.getLB()).min().orElse(0) - BESIDE;
        var until = stays.stream()
                        .mapToInt(stay -> stay.start.getUB() + stay.duration)
                        .max()
                        .orElse(0)
                + BESIDE;
        for (var turn : turns) {
            if (seconds.up(turn.end()) > from && seconds.down(turn.begin()) < until) {
                keep(turn);
            }
            pinned(turn);
        }
    }

    private void pinned(Turn turn) {
        for (var i = 0; i < jobs.size(); i++) {
            if (pins.isBefore(jobs.get(i), turn.job())) {
                model.within(stays.get(i), -Seconds.FAR, seconds.down(turn.water()));
            }
            if (pins.isBefore(turn.job(), jobs.get(i))) {
                model.within(stays.get(i), seconds.up(turn.water()), Seconds.FAR);
            }
        }
    }

    private void keep(Turn turn) {
        var from = seconds.down(turn.water());
        var until = seconds.up(turn.end());
        model.block(basins, from, until, 1);
        if (byBasin) {
            model.blockMachine(turn.basin(), from, until);
        }
        if (heads.containsKey(turn.visit())) {
            model.block(head(turn.job()), from, until, 1);
        }
        for (var hold : turn.job().work().hands()) {
            hands.ifPresent(all -> model.block(
                    all,
                    seconds.down(turn.water().plus(hold.from())),
                    seconds.up(turn.water().plus(hold.until())),
                    1));
        }
    }

    void limit(Figure figure, long most) {
        if (most <= IntVar.MAX_INT_BOUND) {
            model.limit(objective(figure), (int) most);
        }
    }

    /** The turns of the best solution, in no order; empty where none was found. */
    Found minimise(Figure figure, long most, Limit limit) {
        if (figure == Figure.WAITING) {
            for (var i = 0; i < jobs.size(); i++) {
                stays.get(i).wanted(seconds.up(jobs.get(i).wanted()));
            }
        }
        var outcome = model.minimise(objective(figure), (int) Math.min(most, IntVar.MAX_INT_BOUND), limit);
        var turns = new ArrayList<Turn>();
        for (var i = 0; outcome.found() && i < jobs.size(); i++) {
            turns.add(
                    new Turn(jobs.get(i), outcome.machine(stays.get(i)), seconds.instant(outcome.start(stays.get(i)))));
        }
        return new Found(turns, outcome);
    }

    /** @param turns empty where nothing was found */
    record Found(List<Turn> turns, Outcome outcome) {}

    private Objective objective(Figure figure) {
        var terms = new ArrayList<Term>();
        for (var i = 0; i < jobs.size(); i++) {
            terms.add(term(figure, jobs.get(i), stays.get(i)));
        }
        return Objective.sum(terms);
    }

    private Term term(Figure figure, Job job, Activity stay) {
        var weight = job.harm().weight();
        var due = seconds.down(job.latest());
        return switch (figure) {
            case OVER -> Term.steps(weight, stay, due, Seconds.down(Score.STEP));
            case LATE -> Term.steps(weight, stay, due, 1);
            case CHANGES -> change(job, stay);
            case WAITING -> Term.distance(1, stay.wanted(seconds.up(job.wanted())));
        };
    }

    private Term change(Job job, Activity stay) {
        var told = station.announced(job);
        if (told.isEmpty()) {
            return Term.constant(1, 0);
        }
        var from = seconds.down(told.get().water().minus(Announced.MOVED)) + 1;
        var until = seconds.up(told.get().water().plus(Announced.MOVED)) - 1;
        if (from > stay.start.getUB() || until < stay.start.getLB()) {
            return Term.constant(1, 1);
        }
        var basin = told.get().basin();
        return Term.given(1, claims.computeIfAbsent(job, one -> model.claim(stay, from, until, basin)));
    }
}
