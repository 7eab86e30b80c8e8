package rinsebell.floor.basin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rinsebell.floor.testing.RandomStation;

/** The dispatch rule over stations as chance makes them. */
class RandomPlansTest {
    private static final int STATIONS = 5_000;

    @Test
    void everyPlanCanBeCarriedOut() {
        for (var seed = 1L; seed <= STATIONS; seed++) {
            var station = station(seed);
            var plan = new Dispatch().plan(station);
            assertThat(Verifier.faults(station, plan)).as("seed %d", seed).isEmpty();
        }
    }

    /** Against first come, first served and earliest rinse-by first, laid out here by other means. */
    @Test
    void itHarmsLessThanASingleOrder() {
        var over = 0L;
        var firstCome = 0L;
        var earliestFirst = 0L;
        for (var seed = 1L; seed <= STATIONS; seed++) {
            var made = station(seed);
            var station = new Station(RandomStation.BEGIN, made.basins(), Hands.UNKNOWN, made.jobs());
            over += Score.of(station, new Dispatch().plan(station)).over();
            firstCome += over(station, Comparator.comparing(Job::earliest));
            earliestFirst += over(station, Comparator.comparing(Job::latest));
        }
        assertThat(over).isLessThan(firstCome).isLessThan(earliestFirst).isPositive();
    }

    private static long over(Station station, Comparator<Job> order) {
        return Score.of(station, oneAfterTheOther(station, order)).over();
    }

    /** Nobody goes into a gap that lies before somebody who was taken earlier. */
    private static Plan oneAfterTheOther(Station station, Comparator<Job> order) {
        var free = new ArrayList<>(station.basins());
        var turns = new ArrayList<Turn>();
        var jobs = station.jobs().stream()
                .sorted(Comparator.comparing((Job job) -> !job.isAtOnce()).thenComparing(order))
                .toList();
        for (var job : jobs) {
            free.sort(Comparator.comparing(Basin::freeFrom));
            var basin = free.remove(0);
            var water = turns.stream()
                    .filter(turn -> turn.visit().equals(job.visit()))
                    .map(Turn::end)
                    .reduce(job.earliest(), (one, other) -> one.isAfter(other) ? one : other);
            water = basin.freeFrom().isAfter(water) ? basin.freeFrom() : water;
            var turn = new Turn(job, basin.number(), water);
            turns.add(turn);
            free.add(new Basin(basin.number(), turn.end(), basin.since()));
        }
        return new Plan(turns, List.of());
    }

    private static Station station(long seed) {
        var dice = new SplittableRandom(seed);
        return new RandomStation(dice).of(1 + dice.nextInt(9), 1 + dice.nextInt(3), 8 + dice.nextInt(20));
    }
}
