package rinsebell.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.testing.RandomStation;

/** The bound by counting work, on small crowded stations. */
class OverloadTest {
    @Test
    void itIsNeverMoreThanTheBestPlan() {
        var tight = 0;
        var positive = 0;
        for (var seed = 1L; seed <= 120; seed++) {
            var dice = new SplittableRandom(seed);
            var station = new RandomStation(dice).of(3 + dice.nextInt(3), 1 + dice.nextInt(2), 5 + dice.nextInt(6));
            var plan = new BasinPlanner(Budget.each(1_000), System::nanoTime).plan(station);
            var best = Score.of(station, new Plan(plan.turns(), java.util.List.of()))
                    .over();
            var jobs = plan.turns().stream().map(Turn::job).toList();
            var bound = new Overload(station, Seconds.of(station), jobs).bound();
            assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(best);
            tight += bound == best && best > 0 ? 1 : 0;
            positive += best > 0 ? 1 : 0;
        }
        assertThat(tight).as("of %d", positive).isGreaterThan(positive / 20).isPositive();
    }
}
