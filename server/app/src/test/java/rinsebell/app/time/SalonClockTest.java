package rinsebell.app.time;

import static java.time.Duration.ofHours;
import static java.time.Duration.ofMillis;
import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.ClockTrust;

class SalonClockTest {

    private static final Instant TEN = Instant.parse("2026-03-07T10:00:00.123Z");

    private final TimeByHand machine = new TimeByHand(TEN);
    private final SalonClock clock = SalonClock.startingAtTheWall(machine, 1);

    @Test
    void startsAtTheWallAndTicks() {
        assertThat(clock.now()).isEqualTo(TEN);
        machine.pass(ofMillis(1));
        assertThat(clock.now()).isEqualTo(TEN.plusMillis(1));
    }

    @Test
    void itsMillisecondsAreThoseOfTheWall() {
        TimeByHand within = new TimeByHand(TEN.plusNanos(700_000));
        SalonClock exact = SalonClock.startingAtTheWall(within, 1);
        assertThat(exact.now()).isEqualTo(TEN);
        assertThat(SalonClock.goingOnFrom(exact.mark(), within, 1).realTimeUntil(TEN.plusMillis(1)))
                .isEqualTo(Duration.ofNanos(300_000));
        within.pass(Duration.ofNanos(299_999));
        assertThat(exact.now()).isEqualTo(TEN);
        within.pass(Duration.ofNanos(1));
        assertThat(exact.now()).isEqualTo(TEN.plusMillis(1));
    }

    @ParameterizedTest
    @CsvSource({"-3600000, true", "-1001, true", "-1000, false", "1000, false", "1001, true", "3600000, true"})
    void aSetWallClockMovesNothingAndIsSeenAboveOneSecond(long byMillis, boolean seen) {
        machine.setWall(ofMillis(byMillis));
        machine.pass(ofMillis(10));
        assertThat(clock.now()).isEqualTo(TEN.plusMillis(10));
        assertThat(clock.trust()).isEqualTo(seen ? ClockTrust.SET : ClockTrust.AGREES);
    }

    @Test
    void smallStepsAddUp() {
        machine.setWall(ofMillis(600));
        assertThat(clock.trust()).isEqualTo(ClockTrust.AGREES);
        machine.setWall(ofMillis(600));
        assertThat(clock.stepSeen()).contains(ofMillis(1200));
    }

    @Test
    void aWakeIsNoStepAndTheSleepCounts() {
        machine.pass(ofMillis(10));
        assertThat(clock.now()).isEqualTo(TEN.plusMillis(10));
        machine.sleep(ofMinutes(25));
        assertThat(clock.now()).isEqualTo(TEN.plusMillis(10).plus(ofMinutes(25)));
        assertThat(clock.trust()).isEqualTo(ClockTrust.AGREES);
    }

    @Test
    void aSleepHiddenByAStepBackIsFoundWithinASecond() {
        machine.sleep(ofMinutes(25));
        machine.setWall(ofMinutes(-25));
        machine.pass(ofSeconds(1));
        assertThat(clock.now()).isEqualTo(TEN.plus(ofMinutes(25)).plusSeconds(1));
        assertThat(clock.stepSeen()).contains(ofMinutes(-25));
    }

    @Test
    void aSleepAsLongAsTheWallWasSetBackIsFoundAtOnce() {
        machine.setWall(ofMinutes(-25));
        machine.pass(ofMillis(10));
        assertThat(clock.stepSeen()).contains(ofMinutes(-25));
        machine.sleep(ofMinutes(25));
        assertThat(clock.now()).isEqualTo(TEN.plusMillis(10).plus(ofMinutes(25)));
    }

    @Test
    void aStepDuringASleepIsBoth() {
        machine.sleep(ofMinutes(25));
        machine.setWall(ofHours(1));
        assertThat(clock.now()).isEqualTo(TEN.plus(ofMinutes(25)));
        assertThat(clock.stepSeen()).contains(ofHours(1));
    }

    @Test
    void withoutUptimeASleepIsLeftToAPerson() {
        machine.hideUptime();
        SalonClock blind = SalonClock.startingAtTheWall(machine, 1);
        machine.sleep(ofMinutes(25));
        assertThat(blind.now()).isEqualTo(TEN);
        assertThat(blind.stepSeen()).contains(ofMinutes(25));
    }

    @Test
    void aConfirmedStepMovesTheSalonByThatMuch() {
        machine.setWall(ofHours(-1));
        machine.pass(ofMillis(5));
        clock.confirm(clock.stepSeen().orElseThrow(), 7);
        assertThat(clock.now()).isEqualTo(TEN.minus(ofHours(1)).plusMillis(5));
        assertThat(clock.trust()).isEqualTo(ClockTrust.AGREES);
        machine.pass(ofMillis(7));
        assertThat(clock.now()).isEqualTo(TEN.minus(ofHours(1)).plusMillis(12));
    }

    @Test
    void theDemoRunsFaster() {
        SalonClock fast = SalonClock.startingAtTheWall(machine, 30);
        machine.pass(ofSeconds(2));
        assertThat(fast.now()).isEqualTo(TEN.plusSeconds(60));
        assertThat(fast.trust()).isEqualTo(ClockTrust.AGREES);
        assertThat(fast.realTimeUntil(TEN.plusSeconds(120))).isEqualTo(ofSeconds(2));
        assertThat(fast.realTimeUntil(TEN.plusSeconds(60))).isZero();
        assertThat(fast.realTimeUntil(TEN)).isZero();
    }

    /** A watch that sleeps that long wakes when the instant is shown, and a nanosecond sooner it is not yet. */
    @ParameterizedTest
    @CsvSource({"1, 1000", "1, 1", "30, 1000", "30, 31", "7, 100", "30, 1"})
    void theTimeUntilAnInstantIsExact(int speed, long salonMillis) {
        SalonClock any = SalonClock.startingAtTheWall(machine, speed);
        machine.pass(Duration.ofNanos(300_001));
        Instant due = TEN.plusMillis(salonMillis).minusNanos(1);
        Duration left = any.realTimeUntil(due);
        machine.pass(left.minusNanos(1));
        assertThat(any.now()).isBefore(due);
        machine.pass(Duration.ofNanos(1));
        assertThat(any.now()).isAfterOrEqualTo(due);
    }

    @Test
    void theTimeUntilAnInstantKnowsOfSleepAndOfAClockPutRight() {
        machine.sleep(ofMinutes(10));
        assertThat(clock.now()).isEqualTo(TEN.plus(ofMinutes(10)));
        assertThat(clock.realTimeUntil(TEN.plus(ofMinutes(11)))).isEqualTo(ofMinutes(1));
        machine.setWall(ofMinutes(-5));
        clock.confirm(clock.stepSeen().orElseThrow(), 7);
        assertThat(clock.realTimeUntil(TEN.plus(ofMinutes(11)))).isEqualTo(ofMinutes(6));
    }

    @Test
    void goesOnAfterARestartOfTheServer() {
        ClockMark mark = clock.mark();
        machine.pass(ofMinutes(4));
        SalonClock next = SalonClock.goingOnFrom(mark, machine, 1);
        assertThat(next.now()).isEqualTo(TEN.plus(ofMinutes(4)));
        assertThat(next.trust()).isEqualTo(ClockTrust.AGREES);
    }

    @ParameterizedTest
    @CsvSource({"-3600", "-2", "2", "3600"})
    void aStepWhileNoServerRanIsSeenAtTheStart(long bySeconds) {
        ClockMark mark = clock.mark();
        machine.pass(ofMinutes(4));
        machine.setWall(ofSeconds(bySeconds));
        SalonClock next = SalonClock.goingOnFrom(mark, machine, 1);
        assertThat(next.now()).isEqualTo(TEN.plus(ofMinutes(4)));
        assertThat(next.stepSeen()).contains(ofSeconds(bySeconds));
    }

    @Test
    void afterANewStartOfTheMachineTheWallIsTaken() {
        ClockMark mark = clock.mark();
        machine.pass(ofHours(9));
        machine.restartMachine("boot-2");
        SalonClock next = SalonClock.goingOnFrom(mark, machine, 1);
        assertThat(next.now()).isEqualTo(TEN.plus(ofHours(9)));
        assertThat(next.trust()).isEqualTo(ClockTrust.AGREES);
    }

    @Test
    void aMachineThatWakesInThePastDoesNotTakeTheSalonThere() {
        ClockMark mark = clock.mark();
        machine.restartMachine("boot-2");
        machine.setWall(Duration.ofDays(-400));
        SalonClock next = SalonClock.goingOnFrom(mark, machine, 1);
        assertThat(next.now()).isEqualTo(TEN);
        assertThat(next.stepSeen()).contains(Duration.ofDays(-400));
        assertThat(next.trust()).isEqualTo(ClockTrust.BEHIND);
    }

    /** The machine is up for 20 s when its server starts, so it started that much before what its clock shows. */
    @ParameterizedTest
    @CsvSource({"18999, BEHIND", "19000, AGREES", "20000, AGREES", "3600000, AGREES", "-60000, BEHIND"})
    void aMachineThatStartedBeforeTheMarkWasMadeIsBehind(long wallAheadMillis, ClockTrust trust) {
        ClockMark mark = clock.mark();
        machine.restartMachine("boot-2");
        machine.setWall(ofMillis(wallAheadMillis));
        SalonClock next = SalonClock.goingOnFrom(mark, machine, 1);
        assertThat(next.trust()).isEqualTo(trust);
    }

    /** It may be of this very start of the machine, which can have been up for days. */
    @ParameterizedTest
    @CsvSource({"-1001, BEHIND", "-1000, AGREES", "1, AGREES"})
    void aMarkThatKnowsNoStartOfTheMachineTellsByTheWallAlone(long wallAheadMillis, ClockTrust trust) {
        ClockMark mark = new ClockMark("", 0, clock.now(), false, 0);
        machine.setWall(ofMillis(wallAheadMillis));
        assertThat(SalonClock.goingOnFrom(mark, machine, 1).trust()).isEqualTo(trust);
    }

    @Test
    void behindStaysUntilAPersonHasSpoken() {
        ClockMark mark = clock.mark();
        machine.restartMachine("boot-2");
        SalonClock next = SalonClock.goingOnFrom(mark, machine, 1);
        machine.pass(ofSeconds(30));
        machine.setWall(ofMinutes(25));
        SalonClock restarted = SalonClock.goingOnFrom(next.mark(), machine, 1);
        assertThat(restarted.trust()).isEqualTo(ClockTrust.BEHIND);
        assertThat(restarted.now()).isEqualTo(TEN.plusSeconds(30));
        restarted.confirm(restarted.stepSeen().orElseThrow(), 7);
        assertThat(restarted.now()).isEqualTo(TEN.plusSeconds(30).plus(ofMinutes(25)));
        assertThat(restarted.trust()).isEqualTo(ClockTrust.AGREES);
        assertThat(SalonClock.goingOnFrom(restarted.mark(), machine, 1).trust()).isEqualTo(ClockTrust.AGREES);
    }

    @Test
    void aMarkNamesTheFactThatItsClockHasFollowedLast() {
        assertThat(clock.mark().confirmed()).isZero();
        clock.confirm(ofHours(1), 17);
        assertThat(clock.mark().confirmed()).isEqualTo(17);
        SalonClock next = SalonClock.goingOnFrom(clock.mark(), machine, 1);
        assertThat(next.mark().confirmed()).isEqualTo(17);
    }

    @ParameterizedTest
    @CsvSource({"16, 0", "17, 3600000", "18, 3600000"})
    void aFloorThatHasNotMovedYetIsShownAtTheTimeBefore(long lastFact, long movedMillis) {
        clock.confirm(ofHours(1), 17);
        assertThat(clock.now(lastFact)).isEqualTo(TEN.plusMillis(movedMillis));
        assertThat(SalonClock.goingOnFrom(clock.mark(), machine, 1).now(16))
                .as("what was loaded has moved")
                .isEqualTo(TEN.plus(ofHours(1)));
    }

    @Test
    void neverGoesBackWhateverHappens() {
        long seed = 20260307;
        Random random = new Random(seed);
        Instant last = clock.now();
        for (int step = 0; step < 20_000; step++) {
            Duration time = ofMillis(random.nextInt(3_000));
            switch (random.nextInt(3)) {
                case 0 -> machine.pass(time);
                case 1 -> machine.sleep(time);
                default -> machine.setWall(random.nextBoolean() ? time : time.negated());
            }
            Instant now = clock.now();
            assertThat(now).as("seed %s, step %s", seed, step).isAfterOrEqualTo(last);
            last = now;
        }
    }
}
