package rinsebell.planner;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Planner;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Verifier;

/**
 * Plans by a solver that starts from the dispatch rule's plan and is never worse. It reckons in whole seconds. The same
 * station has the same plan as long as no time runs out.
 */
public final class BasinPlanner implements Planner {
    /** What of the time for the first figure is for finding; the rest is for its bound. */
    private static final int FINDING = 2;

    private final Budget budget;
    private final LongSupplier nanos;

    /** @param nanos a clock that runs evenly, in nanoseconds from anywhere */
    public BasinPlanner(Budget budget, LongSupplier nanos) {
        this.budget = budget;
        this.nanos = nanos;
    }

    @Override
    public Plan plan(Station station) {
        return solve(station).plan();
    }

    /** A plan, with what is known about it. */
    public Solved solve(Station station) {
        var dispatched = new Dispatch().plan(station);
        if (dispatched.turns().isEmpty() || !canReckon(station)) {
            var score = Score.of(station, dispatched);
            return new Solved(dispatched, score, dispatched.turns().isEmpty() ? score.over() : 0, true, List.of());
        }
        return new Solving(station, dispatched).solved();
    }

    /** Whether all its instants are near enough for the solver's numbers. */
    private static boolean canReckon(Station station) {
        var seconds = Seconds.of(station);
        return station.jobs().stream()
                .allMatch(job -> seconds.isNear(job.earliest())
                        && seconds.isNear(job.latest())
                        && seconds.isNear(job.wanted())
                        && job.work().stay().toSeconds() < Seconds.FAR / 4);
    }

    private final class Solving {
        private final Station station;
        private final Plan dispatched;
        private final Search search;
        private final List<Duration> took = new ArrayList<>();

        Solving(Station station, Plan dispatched) {
            this.station = station;
            this.dispatched = dispatched;
            this.search = new Search(station, dispatched, nanos);
        }

        Solved solved() {
            var bound = first();
            for (var figure : List.of(Figure.LATE, Figure.CHANGES, Figure.WAITING)) {
                var begun = nanos.getAsLong();
                search.improve(figure, budget.of(figure));
                took.add(Duration.ofNanos(nanos.getAsLong() - begun));
            }
            var best = search.plan();
            var sound = Verifier.faults(station, best).isEmpty();
            var plan = sound ? best : dispatched;
            return new Solved(plan, Score.of(station, plan), bound, sound, took);
        }

        private long first() {
            var begun = nanos.getAsLong();
            var share = budget.over() / FINDING;
            var least = search.bound();
            var bound = search.improve(Figure.OVER, share, least)
                    ? search.score().over()
                    : Math.max(least, search.bound(budget.over() - share));
            took.add(Duration.ofNanos(nanos.getAsLong() - begun));
            return bound;
        }
    }
}
