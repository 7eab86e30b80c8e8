package rinsebell.demo.measure;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
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
 * many bare sockets. Each due is followed by its yardstick, in one run; before the first both have sent as much as in a
 * morning.
 */
public final class Screens {
    private static final MachineTime MACHINE = new MachineTime();
    private static final int DUES = 25;
    private static final int WARM_UP = 5;
    private static final int WRITES_OF_A_MORNING = 30_000;
    private static final Duration APART = Duration.ofSeconds(2);

    private Screens() {}

    public static void main(String... arguments) throws Exception {
        var many = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
        // Long enough for the server to start, for everybody to connect, and for the morning.
        var first = Duration.ofSeconds(60 + many / 25);
        var day = BusyDay.falling(DUES, Served.now(), ZoneOffset.UTC, first, APART);
        try (var served = Served.with(day);
                var pace = new Pace();
                var bare = new BareBroadcast();
                var screens = new Watchers(served.port(), "floor", many);
                var yardstick = new Watchers(bare.port(), "floor", many)) {
            morning(served, screens, yardstick, bare, WRITES_OF_A_MORNING / many);
            measure(dues(day), screens, yardstick, bare, pace);
        }
        System.exit(0);
    }

    /** Somebody goes on a break and comes back: that changes every row, and nothing that falls due. */
    private static void morning(Served served, Watchers screens, Watchers yardstick, BareBroadcast bare, int changes)
            throws Exception {
        var head = served.day().floor().openVisits().get(0);
        var who = Objects.requireNonNull(head.stay().stylist()).value();
        try (var desk = new Connection(served.port())) {
            for (var i = 0; i < changes / 2 * 2; i++) {
                screens.expect();
                var press = i % 2 == 0 ? "/api/day/break" : "/api/day/back";
                var answer = desk.post(press, UUID.randomUUID().toString(), "{\"staff\":" + who + "}");
                if (answer.status() != 201) {
                    throw new IllegalStateException("not accepted: " + answer);
                }
                screens.arrivals();
                yardstick.expect();
                bare.in(0, screens.sent());
                yardstick.arrivals();
            }
        }
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
                .filter(at -> at.isAfter(from) && at.isBefore(from.plusSeconds(180)))
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
