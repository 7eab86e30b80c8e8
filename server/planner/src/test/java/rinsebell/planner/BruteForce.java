package rinsebell.planner;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.testing.RandomStation;

/**
 * Looks for a plan that is better than one, by trying each stay at each basin in each minute. Where everything is in whole minutes, no
 * plan between the minutes is less late. It only leaves out what is worse already, whatever the rest comes to.
 */
final class BruteForce {
    private static final int END = 60;

    private final Station station;
    private final boolean whole;
    private final List<Job> jobs;
    private final List<Job> without;
    private final boolean[][] basinTaken;
    private final int[] handsLeft;

    /** By job, minute and basin: what it costs to be there, whatever the others do. */
    private final long[][][] costs;

    /** By job: what it and all after it cost at least. */
    private final long[] least;

    private final List<Turn> turns = new ArrayList<>();
    private List<Turn> best = List.of();
    private long bestCost = Long.MAX_VALUE;

    /** @param whole whether all four figures count, or only the two of lateness */
    BruteForce(Station station, boolean whole) {
        this.station = station;
        this.whole = whole;
        // Who finds nothing at any time is none of the solver's business, nor of this.
        this.without = new Dispatch().plan(station).without();
        this.jobs = station.jobs().stream()
                .filter(job -> !without.contains(job))
                .sorted(Comparator.comparing(Job::latest))
                .toList();
        this.basinTaken = new boolean[10][2 * END];
        this.handsLeft = new int[3 * END];
        this.costs = new long[jobs.size()][END][10];
        this.least = new long[jobs.size() + 1];
        stationTaken();
        reckonCosts();
    }

    private void stationTaken() {
        for (var minute = -END; minute < 2 * END; minute++) {
            handsLeft[minute + END] = station.hands().known() ? station.hands().at(instant(minute)) : 99;
        }
        for (var basin : station.basins()) {
            for (var minute = 0; minute < END; minute++) {
                basinTaken[basin.number()][minute] = instant(minute).isBefore(basin.freeFrom());
            }
        }
    }

    private void reckonCosts() {
        for (var i = jobs.size() - 1; i >= 0; i--) {
            var fewest = Long.MAX_VALUE;
            for (var minute = earliest(i); minute < END; minute++) {
                for (var basin : station.basins()) {
                    var turn = new Turn(jobs.get(i), basin.number(), instant(minute));
                    costs[i][minute][basin.number()] = cost(turn);
                    fewest = Math.min(fewest, cost(turn));
                }
            }
            least[i] = least[i + 1] + fewest;
        }
    }

    /** All figures in one number, in their order. */
    private long cost(Turn turn) {
        var score = Score.of(station, new Plan(List.of(turn), List.of()));
        var late = score.over() * 100_000_000 + score.lateSeconds();
        return whole ? (late * 10 + score.changes()) * 100_000 + score.waitingSeconds() : late;
    }

    /** The best score there is if it is better than a plan's. */
    Optional<Score> better(Plan than) {
        bestCost = than.turns().stream().mapToLong(this::cost).sum();
        place(0, 0);
        return best.isEmpty() ? Optional.empty() : Optional.of(Score.of(station, new Plan(best, without)));
    }

    private static Instant instant(int minute) {
        return RandomStation.BEGIN.plus(Duration.ofMinutes(minute));
    }

    private static int minute(Instant instant) {
        return (int) Duration.between(RandomStation.BEGIN, instant).toMinutes();
    }

    private int earliest(int job) {
        return Math.max(0, minute(jobs.get(job).earliest()));
    }

    private void place(int next, long cost) {
        if (next == jobs.size() && cost < bestCost) {
            best = List.copyOf(turns);
            bestCost = cost;
        }
        if (next == jobs.size()) {
            return;
        }
        for (var minute = earliest(next); minute < END; minute++) {
            for (var basin : station.basins()) {
                var now = cost + costs[next][minute][basin.number()];
                var turn = new Turn(jobs.get(next), basin.number(), instant(minute));
                if (now + least[next + 1] < bestCost && fits(turn)) {
                    take(turn, true);
                    turns.add(turn);
                    place(next + 1, now);
                    turns.remove(turns.size() - 1);
                    take(turn, false);
                }
            }
        }
    }

    private boolean fits(Turn turn) {
        var begin = minute(turn.water());
        for (var minute = begin; minute < minute(turn.end()); minute++) {
            if (basinTaken[turn.basin()][minute]) {
                return false;
            }
        }
        for (var hold : turn.job().work().hands()) {
            for (var minute = begin + hold.from().toMinutes();
                    minute < begin + hold.until().toMinutes();
                    minute++) {
                if (handsLeft[(int) minute + END] <= 0) {
                    return false;
                }
            }
        }
        return pinKept(turn) && turns.stream().allMatch(other -> together(turn, other));
    }

    private void take(Turn turn, boolean taken) {
        var begin = minute(turn.water());
        for (var minute = begin; minute < minute(turn.end()); minute++) {
            basinTaken[turn.basin()][minute] = taken;
        }
        for (var hold : turn.job().work().hands()) {
            for (var minute = begin + hold.from().toMinutes();
                    minute < begin + hold.until().toMinutes();
                    minute++) {
                handsLeft[(int) minute + END] += taken ? -1 : 1;
            }
        }
    }

    private boolean pinKept(Turn turn) {
        var pin = station.pin(turn.job()).map(Pin::basin);
        return pin.isEmpty()
                || station.basins().stream().noneMatch(basin -> basin.number() == pin.get())
                || turn.basin() == pin.get();
    }

    private boolean together(Turn one, Turn other) {
        var apart = !one.water().isBefore(other.end()) || !other.water().isBefore(one.end());
        return (!one.visit().equals(other.visit()) || apart) && inOrder(one, other) && inOrder(other, one);
    }

    /** Whether a pin of the first, if it has one that counts, lets the second be where it is. */
    private boolean inOrder(Turn one, Turn other) {
        var pin = station.pin(one.job());
        return pin.isEmpty()
                || !other.visit().equals(pin.get().before())
                || other.job().isAtOnce()
                || circle(one)
                || !other.water().isBefore(one.water());
    }

    private boolean circle(Turn turn) {
        var at = station.pins().get(turn.visit());
        for (var i = 0; i < 20 && at != null && at.before() != null; i++) {
            if (at.before().equals(turn.visit())) {
                return true;
            }
            at = station.pins().get(at.before());
        }
        return at != null && at.before() != null;
    }
}
