package rinsebell.planner;

import static java.time.Duration.ofDays;
import static java.time.Duration.ofHours;
import static java.time.Duration.ofMinutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Hands;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Verifier;
import rinsebell.floor.basin.Work;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.testing.RandomStation;
import rinsebell.floor.visit.VisitId;

class BasinPlannerTest {
    private static final Instant BEGIN = FullHouse.BEGIN;
    private static final BasinPlanner PLANNER = new BasinPlanner(Budget.each(500), System::nanoTime);

    /** Whatever little time there is. */
    @Test
    void itIsNeverWorseThanTheDispatchRule() {
        var better = 0;
        for (var seed = 1L; seed <= 40; seed++) {
            var dice = new SplittableRandom(seed);
            var house = dice.nextBoolean()
                    ? new FullHouse(dice).of(20 + dice.nextInt(21), 4 + dice.nextInt(5), 6, 0.9)
                    : new RandomStation(dice).of(20 + dice.nextInt(21), 2 + dice.nextInt(4), 60);
            var solved = new BasinPlanner(Budget.each(10), System::nanoTime).solve(house);
            var dispatched = Score.of(house, new Dispatch().plan(house));
            assertThat(solved.sound()).as("seed %d", seed).isTrue();
            assertThat(Verifier.faults(house, solved.plan()))
                    .as("seed %d", seed)
                    .isEmpty();
            assertThat(solved.score())
                    .as("seed %d", seed)
                    .isEqualTo(Score.of(house, solved.plan()))
                    .isLessThanOrEqualTo(dispatched);
            assertThat(solved.bound())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(solved.score().over());
            better += solved.score().compareTo(dispatched) < 0 ? 1 : 0;
        }
        assertThat(better).isPositive();
    }

    /** Without a limit of time it says the same again. */
    @Test
    void theSameStationHasTheSamePlan() {
        for (var seed = 1L; seed <= 20; seed++) {
            var station = new RandomStation(new SplittableRandom(seed)).of(5, 2, 20);
            var patient = new BasinPlanner(Budget.each(100_000), () -> 0L);
            assertThat(patient.plan(station)).as("seed %d", seed).isEqualTo(patient.plan(station));
        }
    }

    /** What was announced costs nobody their rinse-by, and a pin is kept whatever it costs. */
    @Test
    void lateHeadsComeBeforeWhatWasAnnouncedAndPinsBeforeLateHeads() {
        var first = job(1, 0, 20, 10);
        var second = job(2, 0, 5, 10);
        var told = Map.of(first.anchor(), new Announced(1, at(0)), second.anchor(), new Announced(1, at(10)));
        var station = new Station(BEGIN, basins(1), Hands.UNKNOWN, List.of(first, second), Map.of(), told);
        var solved = PLANNER.solve(station);
        assertThat(solved.score().over()).isZero();
        assertThat(solved.score().changes()).isEqualTo(2);
        assertThat(solved.isProven()).isTrue();
        var pins = Map.of(first.visit(), new Pin(null, second.visit(), java.time.Instant.EPOCH));
        var pinned = new Station(BEGIN, basins(1), Hands.UNKNOWN, List.of(first, second), pins, told);
        assertThat(PLANNER.plan(pinned).turns())
                .first()
                .satisfies(turn -> assertThat(turn.job()).isEqualTo(first));
    }

    @Test
    void withNoBasinsNobodyHasATurn() {
        var station = new Station(BEGIN, List.of(), Hands.UNKNOWN, List.of(job(1, 0, 5, 5)));
        var solved = PLANNER.solve(station);
        assertThat(solved.plan().turns()).isEmpty();
        assertThat(solved.plan().without()).hasSize(1);
        assertThat(solved.isProven()).isTrue();
    }

    @Test
    void withNoHandsNobodyHasATurn() {
        var station = new Station(BEGIN, basins(2), Hands.always(0), List.of(job(1, 0, 5, 5)));
        assertThat(PLANNER.plan(station)).isEqualTo(new Dispatch().plan(station));
        assertThat(PLANNER.plan(station).turns()).isEmpty();
    }

    @Test
    void withNobodyThereIsNothingToPlan() {
        var solved = PLANNER.solve(new Station(BEGIN, basins(2), Hands.UNKNOWN, List.of()));
        assertThat(solved.score()).isEqualTo(new Score(0, 0, 0, 0));
        assertThat(solved.isProven()).isTrue();
    }

    @Test
    void handsThatEndLeaveOutTheSameAsTheDispatchRule() {
        var hands = Hands.of(List.of(new Hands.Step(at(-10), 1), new Hands.Step(at(11), 0)));
        var station = new Station(BEGIN, basins(2), hands, List.of(job(1, 0, 5, 6), job(2, 0, 6, 6)));
        var solved = PLANNER.solve(station);
        assertThat(solved.plan().without())
                .isEqualTo(new Dispatch().plan(station).without())
                .hasSize(1);
        assertThat(Verifier.faults(station, solved.plan())).isEmpty();
    }

    /** By minutes, by hours and by years. */
    @Test
    void aDeadlineThatIsPastIsMissedByAsLittleAsCanBe() {
        for (var past : List.of(ofMinutes(30), ofHours(30), ofDays(3_000))) {
            var late = new Job(
                    new VisitId(1),
                    101,
                    BEGIN,
                    BEGIN,
                    BEGIN,
                    BEGIN.minus(past),
                    Job.Harm.HAIR,
                    job(1, 0, 0, 5).work());
            var station = new Station(BEGIN, basins(1), Hands.UNKNOWN, List.of(late, job(2, 0, 30, 5)));
            var solved = PLANNER.solve(station);
            assertThat(solved.score().lateSeconds()).as("past %s", past).isEqualTo(3 * past.toSeconds());
            assertThat(solved.plan().turns().get(0).water()).isEqualTo(BEGIN);
        }
    }

    @Test
    void aStayLongerThanTheDayIsPlannedAsIfItWereNone() {
        var station = new Station(BEGIN, basins(1), Hands.always(1), List.of(job(1, 0, 5, 2_000), job(2, 1, 8, 5)));
        var solved = PLANNER.solve(station);
        assertThat(Verifier.faults(station, solved.plan())).isEmpty();
        assertThat(solved.plan().turns())
                .first()
                .satisfies(turn -> assertThat(turn.visit()).isEqualTo(new VisitId(2)));
        assertThat(solved.isProven()).isTrue();
    }

    @Test
    void fiveHundredChairsHaveAPlan() {
        var station = new FullHouse(new SplittableRandom(7)).of(500, 8, 6, 0.9);
        var solved = new BasinPlanner(Budget.QUICK, System::nanoTime).solve(station);
        assertThat(Verifier.faults(station, solved.plan())).isEmpty();
        assertThat(solved.score()).isLessThanOrEqualTo(Score.of(station, new Dispatch().plan(station)));
        assertThat(solved.plan().turns()).hasSize(500);
    }

    private static Job job(int number, int ready, int latest, int rinsing) {
        return new Job(
                new VisitId(number),
                100 + number,
                BEGIN,
                at(ready),
                at(ready),
                at(latest),
                Job.Harm.RESULT,
                Work.rinse(ofMinutes(0), ofMinutes(rinsing)));
    }

    private static Instant at(int minute) {
        return BEGIN.plus(ofMinutes(minute));
    }

    private static List<Basin> basins(int count) {
        return java.util.stream.IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Basin(number, Instant.MIN, BEGIN))
                .toList();
    }
}
