package rinsebell.app.desk;

import static java.time.Duration.ofMillis;
import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rinsebell.floor.testing.Saturday.TEN;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.bell.AlarmState;
import rinsebell.floor.bell.Audience;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Reach;
import rinsebell.floor.bell.Ring;
import rinsebell.floor.bell.Stage;

class BellWatchTest {
    private static final BellKey KEY = new BellKey(BellKind.RINSE, 1, 2);

    private final TimeByHand machine = new TimeByHand(TEN);
    private final SalonClock clock = SalonClock.startingAtTheWall(machine, 1);
    private final AtomicReference<List<Bell>> shown = new AtomicReference<>(bellsAt());
    private final AtomicInteger rung = new AtomicInteger();
    private final BellWatch watch = new BellWatch(shown::get, clock, rung::incrementAndGet);

    /** Time that is turned by hand in the middle of a look is two times at once. */
    @BeforeEach
    void firstLookIsOver() throws Exception {
        looked();
    }

    @AfterEach
    void close() {
        watch.close();
    }

    @Test
    void ringsAtTheInstantAndNotBefore() throws Exception {
        show(bellsAt(TEN.plusSeconds(20)));
        machine.pass(ofSeconds(20).minusMillis(1));
        looked();
        assertThat(rung).hasValue(0);
        machine.pass(ofMillis(1));
        looked();
        assertThat(rung).hasValue(1);
        looked();
        assertThat(rung).hasValue(1);
    }

    /** Within the last second before it, once, and not when it is too near for anybody to prepare. */
    @ParameterizedTest
    @CsvSource({"1000, 0", "999, 1", "51, 1", "50, 0", "0, 0"})
    void whatFallsDueSoonIsSaidBefore(int millisBefore, int said) throws Exception {
        List<Instant> soon = new CopyOnWriteArrayList<>();
        Instant due = TEN.plusSeconds(20);
        try (BellWatch prompt = new BellWatch(shown::get, clock, new BellWatch.Word() {
            @Override
            public void due() {}

            @Override
            public void soon(Instant due) {
                soon.add(due);
            }
        })) {
            looked(prompt);
            show(bellsAt(due));
            machine.pass(ofSeconds(20).minusMillis(millisBefore));
            looked(prompt);
            looked(prompt);
            assertThat(soon).isEqualTo(Collections.nCopies(said, due));
        }
    }

    @Test
    void everyStageRings() throws Exception {
        show(bellsAt(TEN.plusSeconds(5), TEN.plusSeconds(10), TEN.plusSeconds(15)));
        for (int stage = 1; stage <= 3; stage++) {
            machine.pass(ofSeconds(5));
            looked();
            assertThat(rung).hasValue(stage);
        }
    }

    @Test
    void whatFellDueDuringASleepRingsAtTheWake() throws Exception {
        show(bellsAt(TEN.plusSeconds(20)));
        machine.sleep(ofMinutes(40));
        looked();
        assertThat(rung).hasValue(1);
    }

    @Test
    void aStepOfTheWallClockRingsNothingAndSilencesNothing() throws Exception {
        show(bellsAt(TEN.plusSeconds(20)));
        machine.setWall(Duration.ofHours(3));
        looked();
        assertThat(rung).hasValue(0);
        machine.setWall(Duration.ofHours(-6));
        machine.pass(ofSeconds(20));
        looked();
        assertThat(rung).hasValue(1);
    }

    @Test
    void aConfirmedStepBackLosesNoBell() throws Exception {
        machine.setWall(Duration.ofHours(-1));
        looked();
        clock.confirm(Duration.ofHours(-1), 1);
        Instant hourEarlier = clock.now();
        looked();
        rung.set(0);
        show(bellsAt(hourEarlier.plusSeconds(3)));
        machine.pass(ofSeconds(3));
        looked();
        assertThat(rung).hasValue(1);
    }

    @Test
    void looksByItselfWithinASecond() {
        show(bellsAt(TEN.plusSeconds(1)));
        machine.pass(ofSeconds(1));
        await().atMost(5, TimeUnit.SECONDS).until(() -> rung.get() == 1);
    }

    @Test
    void pagesAreDrawnAgainEachHalfMinute() throws Exception {
        machine.pass(ofSeconds(30).minusMillis(1));
        looked();
        assertThat(rung).hasValue(0);
        machine.pass(ofMillis(1));
        looked();
        assertThat(rung).hasValue(1);
    }

    @Test
    void aLookThatFailsIsNotTheLast() throws Exception {
        AtomicInteger looks = new AtomicInteger();
        CountDownLatch rings = new CountDownLatch(1);
        List<Bell> due = bellsAt(TEN.plusSeconds(1));
        try (BellWatch stumbling = new BellWatch(
                () -> {
                    if (looks.incrementAndGet() == 1) {
                        throw new IllegalStateException("a bell that can't be computed");
                    }
                    return due;
                },
                clock,
                rings::countDown)) {
            machine.pass(ofSeconds(2));
            assertThat(rings.await(10, TimeUnit.SECONDS)).isTrue();
        }
    }

    /** On this machine's own clock: how late a bell is. The figure that matters is far below the heartbeat of people. */
    @Test
    void aRealBellIsNotLate() throws Exception {
        SalonClock real = SalonClock.startingAtTheWall(new MachineTime(), 1);
        Instant due = real.now().plusMillis(150);
        CountDownLatch rang = new CountDownLatch(1);
        try (BellWatch live = new BellWatch(() -> bellsAt(due), real, rang::countDown)) {
            assertThat(rang.await(5, TimeUnit.SECONDS)).isTrue();
            assertThat(Duration.between(due, real.now())).isBetween(Duration.ZERO, ofMillis(500));
        }
    }

    private void show(List<Bell> bells) {
        shown.set(bells);
    }

    /** Asks for a look and waits until it is over: a second word is only taken after the first. */
    private void looked() throws InterruptedException {
        looked(watch);
    }

    private static void looked(BellWatch watch) throws InterruptedException {
        CountDownLatch over = new CountDownLatch(1);
        watch.moved();
        watch.afterLook(over::countDown);
        assertThat(over.await(10, TimeUnit.SECONDS)).isTrue();
    }

    private static List<Bell> bellsAt(Instant... stages) {
        List<Stage> all = Arrays.stream(stages)
                .map(at -> new Stage(at, Stage.Step.DUE, Priority.HIGH, Audience.EVERYONE))
                .toList();
        return all.isEmpty()
                ? List.of()
                : List.of(new Bell(KEY, KEY, null, List.of(), all, Set.of(), Set.of(), rings(all)));
    }

    private static List<Ring> rings(List<Stage> stages) {
        return stages.stream()
                .map(stage -> new Ring(stage.from(), AlarmState.UNACKNOWLEDGED, stage, Reach.EVERYONE))
                .toList();
    }
}
