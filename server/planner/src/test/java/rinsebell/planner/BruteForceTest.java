package rinsebell.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Verifier;
import rinsebell.floor.testing.RandomStation;

/** Small stations as chance makes them, against every plan that there is. */
class BruteForceTest {
    private static final int STATIONS = Integer.getInteger("rinsebell.stations", 100);
    private static final Budget HARM = new Budget(30_000, 30_000, 20, 20);
    private static final Budget WHOLE = Budget.each(8_000);

    /** No plan harms less, and that is known. */
    @Test
    void nothingHarmsLess() {
        for (var seed = 1L; seed <= STATIONS; seed++) {
            var dice = new SplittableRandom(seed);
            var station = new RandomStation(dice).of(2 + dice.nextInt(3), 1 + dice.nextInt(3), 8 + dice.nextInt(12));
            var solved = solved(station, HARM, seed);
            assertThat(new BruteForce(station, false).better(solved.plan()))
                    .as("seed %d: %s", seed, solved.score())
                    .isEmpty();
            assertThat(solved.isProven()).as("seed %d", seed).isTrue();
        }
    }

    /** No plan in whole minutes is better in any figure that comes before one in which it is worse. */
    @Test
    void nothingIsBetter() {
        for (var seed = -1L; seed >= -STATIONS; seed--) {
            var dice = new SplittableRandom(seed);
            var station = new RandomStation(dice).of(2 + dice.nextInt(2), 1 + dice.nextInt(2), 6 + dice.nextInt(8));
            var solved = solved(station, WHOLE, seed);
            assertThat(new BruteForce(station, true).better(solved.plan()))
                    .as("seed %d: %s", seed, solved.score())
                    .isEmpty();
        }
    }

    private static Solved solved(Station station, Budget budget, long seed) {
        var solved = new BasinPlanner(budget, System::nanoTime).solve(station);
        var dispatched = Score.of(station, new Dispatch().plan(station));
        assertThat(solved.sound()).as("seed %d", seed).isTrue();
        assertThat(Verifier.faults(station, solved.plan())).as("seed %d", seed).isEmpty();
        assertThat(solved.score()).as("seed %d", seed).isLessThanOrEqualTo(dispatched);
        assertThat(solved.score()).as("seed %d", seed).isEqualTo(Score.of(station, solved.plan()));
        return solved;
    }
}
