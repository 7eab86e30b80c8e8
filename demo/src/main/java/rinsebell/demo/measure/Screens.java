package rinsebell.demo.measure;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import rinsebell.app.time.MachineTime;
import rinsebell.demo.BusyDay;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Ring;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Screens 200}: from the instant at which something is due to
 * the first byte of it on so many screens that show the whole floor, beside a timer that writes the same bytes to as
 * many bare sockets. Each due is followed by its yardstick, in one run.
 */
public final class Screens {
    private static final MachineTime MACHINE = new MachineTime();
    private static final int DUES = 25;
    private static final int WARM_UP = 5;
    private static final Duration APART = Duration.ofSeconds(2);

    private Screens() {}

    public static void main(String... arguments) throws Exception {
        var many = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
        // Long enough for the server to start and for everybody to connect.
        var first = Duration.ofSeconds(20 + many / 50);
        var day = BusyDay.falling(DUES, Served.now(), ZoneOffset.UTC, first, APART);
        try (var served = Served.with(day);
                var pace = new Pace();
                var bare = new BareBroadcast();
                var screens = new Watchers(served.port(), "floor", many);
                var yardstick = new Watchers(bare.port(), "floor", many)) {
            measure(dues(day), screens, yardstick, bare, pace);
        }
        System.exit(0);
    }

    private static void measure(List<Instant> dues, Watchers screens, Watchers yardstick, BareBroadcast bare, Pace pace)
            throws InterruptedException, ExecutionException {
        var late = LongStream.builder();
        var bareLate = LongStream.builder();
        var bytes = 0;
        for (var i = 0; i < dues.size(); i++) {
            var due = nanosOf(dues.get(i));
            // What was due before must not be taken for it.
            pace.passes(due - MACHINE.monotonicNanos() - TimeUnit.MILLISECONDS.toNanos(200));
            screens.expect();
            var took = since(due, screens.arrivals());
            // What else changed with it comes right after.
            pace.passesMillis(300);
            bytes = screens.sent().length;
            yardstick.expect();
            var again = MACHINE.monotonicNanos() + TimeUnit.MILLISECONDS.toNanos(300);
            bare.in(again - MACHINE.monotonicNanos(), screens.sent());
            var bareTook = since(again, yardstick.arrivals());
            if (i >= WARM_UP) {
                Arrays.stream(took).forEach(late);
                Arrays.stream(bareTook).forEach(bareLate);
            }
        }
        var ours = new Quantiles(late.build().toArray());
        var theirs = new Quantiles(bareLate.build().toArray());
        System.out.printf(
                Locale.ROOT,
                "JDK %s, %d bytes a change: due to first byte %s; bare broadcast %s; p99 %.2f of it%n",
                Runtime.version().feature(),
                bytes,
                ours,
                theirs,
                ours.millis(0.99) / theirs.millis(0.99));
    }

    private static List<Instant> dues(BusyDay day) {
        var from = Served.now().plusSeconds(1);
        return day.floor().bells().stream()
                .flatMap(bell -> rings(bell))
                .filter(at -> at.isAfter(from) && at.isBefore(from.plusSeconds(110)))
                .distinct()
                .sorted()
                .limit(DUES)
                .toList();
    }

    private static Stream<Instant> rings(Bell bell) {
        return bell.rings().stream().map(Ring::from);
    }

    private static long[] since(long due, long[] came) {
        return Arrays.stream(came).map(at -> at - due).toArray();
    }

    /** The wall clock's instant on the monotonic clock. */
    private static long nanosOf(Instant instant) {
        var milli = MACHINE.wallMillis();
        while (MACHINE.wallMillis() == milli) {
            Thread.onSpinWait();
        }
        return MACHINE.monotonicNanos() + TimeUnit.MILLISECONDS.toNanos(instant.toEpochMilli() - milli - 1);
    }
}
