package rinsebell.demo.measure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import rinsebell.app.desk.BellWatch;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.bell.AlarmState;
import rinsebell.floor.bell.Audience;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Reach;
import rinsebell.floor.bell.Ring;
import rinsebell.floor.bell.Stage;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Lateness}: how late the bell watch is for 10,000 bells that
 * fall due within 10 seconds, beside a plain scheduler that has a task for each. Five runs of each in turn.
 */
public final class Lateness {
    private static final int BELLS = 10_000;
    private static final int RUNS = 5;

    private Lateness() {}

    public static void main(String... arguments) throws Exception {
        var watch = new double[RUNS];
        var plain = new double[RUNS];
        for (var run = 0; run < RUNS; run++) {
            watch[run] = said("bell watch", watched()).millis(0.99);
            plain[run] = said("plain scheduler", scheduled()).millis(0.99);
        }
        System.out.printf(
                Locale.ROOT,
                "median p99 of %d runs: bell watch %.2f ms, plain scheduler %.2f ms%n",
                RUNS,
                median(watch),
                median(plain));
    }

    private static Quantiles said(String who, Quantiles late) {
        System.out.println(who + ": " + late);
        return late;
    }

    private static double median(double[] runs) {
        var sorted = runs.clone();
        java.util.Arrays.sort(sorted);
        return sorted[RUNS / 2];
    }

    private static Quantiles watched() throws InterruptedException {
        var clock = SalonClock.startingAtTheWall(new MachineTime(), 1);
        var dues = dues(clock.now());
        var bells = bells(dues);
        var late = new long[BELLS];
        var next = new int[1];
        var all = new CountDownLatch(1);
        try (var watch = new BellWatch(() -> bells, clock, () -> {
            var now = clock.now();
            for (; next[0] < BELLS && !dues.get(next[0]).isAfter(now); next[0]++) {
                late[next[0]] = nanosBetween(dues.get(next[0]), now);
            }
            if (next[0] == BELLS) {
                all.countDown();
            }
        })) {
            watch.moved();
            all.await();
        }
        return new Quantiles(late);
    }

    private static Quantiles scheduled() throws InterruptedException {
        var clock = SalonClock.startingAtTheWall(new MachineTime(), 1);
        var late = new long[BELLS];
        var all = new CountDownLatch(BELLS);
        var scheduler = new ScheduledThreadPoolExecutor(1);
        var dues = dues(clock.now());
        for (var i = 0; i < BELLS; i++) {
            var number = i;
            var wait = nanosBetween(clock.now(), dues.get(i));
            var unused = scheduler.schedule(
                    () -> {
                        late[number] = Math.max(0, nanosBetween(dues.get(number), clock.now()));
                        all.countDown();
                    },
                    wait,
                    TimeUnit.NANOSECONDS);
        }
        all.await();
        scheduler.shutdownNow();
        return new Quantiles(late);
    }

    private static long nanosBetween(Instant from, Instant until) {
        return java.time.Duration.between(from, until).toNanos();
    }

    private static List<Instant> dues(Instant now) {
        var dues = new ArrayList<Instant>();
        for (var i = 0; i < BELLS; i++) {
            dues.add(now.plusMillis(2_000 + i));
        }
        return dues;
    }

    private static List<Bell> bells(List<Instant> dues) {
        var bells = new ArrayList<Bell>();
        for (var i = 0; i < BELLS; i++) {
            var key = new BellKey(BellKind.RINSE, i, i);
            var stage = new Stage(dues.get(i), Stage.Step.DUE, Priority.HIGH, Audience.EVERYONE);
            var ring = new Ring(dues.get(i), AlarmState.UNACKNOWLEDGED, stage, Reach.EVERYONE);
            bells.add(new Bell(key, key, null, List.of(), List.of(stage), Set.of(), Set.of(), List.of(ring)));
        }
        return bells;
    }
}
