package rinsebell.demo.measure;

import java.net.StandardSocketOptions;
import java.util.Arrays;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.LongStream;
import rinsebell.app.time.MachineTime;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Stalled}: how long nine screens wait for what a press
 * changed, from the moment at which it is sent, while a tenth never reads; and without that one, in the same run.
 */
public final class Stalled {
    private static final MachineTime MACHINE = new MachineTime();
    private static final int CHAIRS = 60;
    private static final int PRESSES = 300;
    private static final int WARM_UP = 60;
    private static final String LOOK = "{\"level\":7,\"tone\":\"yellow\",\"again\":5}";

    private Stalled() {}

    public static void main(String... arguments) throws Exception {
        try (var served = Served.with(CHAIRS);
                var screens = new Watchers(served.port(), "floor", 9);
                var pace = new Pace();
                var presser = new Connection(served.port())) {
            waits(served, screens, presser, pace, WARM_UP);
            var alone = waits(served, screens, presser, pace, PRESSES);
            try (var stalled = Watchers.opened(served.port(), "floor")) {
                stalled.setOption(StandardSocketOptions.SO_RCVBUF, 4096);
                var beside = waits(served, screens, presser, pace, PRESSES);
                System.out.printf(Locale.ROOT, "nine screens: %s; beside one that never reads: %s%n", alone, beside);
            }
        }
        System.exit(0);
    }

    private static Quantiles waits(Served served, Watchers screens, Connection presser, Pace pace, int presses)
            throws Exception {
        var heads = served.day().floor().openVisits();
        var all = LongStream.builder();
        for (var i = 0; i < presses; i++) {
            screens.expect();
            var start = MACHINE.monotonicNanos();
            var visit = heads.get(i % heads.size()).id().value();
            presser.post("/api/visits/" + visit + "/strand", UUID.randomUUID().toString(), LOOK);
            Arrays.stream(screens.arrivals()).forEach(at -> all.add(at - start));
            pace.passesMillis(20);
        }
        return new Quantiles(all.build().toArray());
    }
}
