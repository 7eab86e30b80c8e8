package rinsebell.planner;

import java.util.Arrays;
import java.util.SplittableRandom;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Planner;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Verifier;

/**
 * How long a plan takes and how good it is, over busy stations as chance makes them. Its arguments are chairs, basins,
 * hands, how many stations, and the first seed; each has a default.
 */
final class PlanTimes {
    private static final int WARM = 30;

    private final int[] sizes;
    private final int stations;
    private final long seed;
    private int better;
    private int proven;
    private int safe;
    private int gap;

    private PlanTimes(String[] arguments) {
        this.sizes = new int[] {argument(arguments, 0, 40), argument(arguments, 1, 8), argument(arguments, 2, 6)};
        this.stations = argument(arguments, 3, 200);
        this.seed = argument(arguments, 4, 1);
    }

    private static int argument(String[] arguments, int place, int otherwise) {
        return place < arguments.length ? Integer.parseInt(arguments[place]) : otherwise;
    }

    /** Prints what it finds. */
    public static void main(String[] arguments) {
        new PlanTimes(arguments).run();
    }

    private void run() {
        for (var warm = 1; warm <= Math.min(WARM, stations); warm++) {
            time(new Dispatch(), station(-warm));
            new BasinPlanner(Budget.QUICK, System::nanoTime).plan(station(-warm));
        }
        var dispatch = new double[stations];
        var solver = new double[stations];
        for (var i = 0; i < stations; i++) {
            var station = station(seed + i);
            dispatch[i] = time(new Dispatch(), station);
            var planner = new BasinPlanner(Budget.QUICK, System::nanoTime);
            var solved = new Solved[1];
            solver[i] = time(
                    asked -> {
                        solved[0] = planner.solve(asked);
                        return solved[0].plan();
                    },
                    station);
            count(station, solved[0]);
        }
        tell("dispatch", dispatch);
        tell("solver", solver);
        System.out.printf(
                "of %d: better than dispatch %d, nobody late %d, first figure proven %d, bounds short by %d together%n",
                stations, better, safe, proven, gap);
    }

    private Station station(long number) {
        var dice = new SplittableRandom(number);
        return new FullHouse(dice).of(sizes[0], sizes[1], sizes[2], 0.6 + 0.35 * dice.nextDouble());
    }

    private static double time(Planner planner, Station station) {
        var begun = System.nanoTime();
        Plan plan = planner.plan(station);
        var took = (System.nanoTime() - begun) / 1e6;
        if (!Verifier.faults(station, plan).isEmpty()) {
            throw new IllegalStateException("a plan that can't be carried out: " + plan);
        }
        return took;
    }

    private void count(Station station, Solved solved) {
        var before = Score.of(station, new Dispatch().plan(station));
        better += solved.score().compareTo(before) < 0 ? 1 : 0;
        proven += solved.isProven() ? 1 : 0;
        safe += solved.score().over() == 0 ? 1 : 0;
        gap += (int) (solved.score().over() - solved.bound());
        if (Boolean.getBoolean("rinsebell.each")) {
            System.out.printf("%s -> %s, bound %d, %s%n", before, solved.score(), solved.bound(), solved.took());
        }
    }

    private static void tell(String what, double[] times) {
        Arrays.sort(times);
        System.out.printf(
                "%s: p50 %.2f ms, p95 %.2f ms, max %.2f ms%n",
                what, at(times, 0.5), at(times, 0.95), times[times.length - 1]);
    }

    private static double at(double[] sorted, double part) {
        return sorted[(int) Math.min(sorted.length - 1, Math.round(part * sorted.length))];
    }
}
