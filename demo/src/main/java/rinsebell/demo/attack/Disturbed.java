package rinsebell.demo.attack;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import rinsebell.app.time.MachineTime;
import rinsebell.demo.measure.Pace;
import rinsebell.demo.measure.Quantiles;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.attack.Disturbed [PRESSES [A-SECOND]]}: how long a press of a device that
 * is in takes over HTTPS, undisturbed and while strangers mean harm in each of their ways, so many times a second. The server
 * has one core to itself; strangers and the device share another, so that what strangers cost is the server's work alone.
 */
public final class Disturbed {
    private static final MachineTime MACHINE = new MachineTime();
    private static final String SERVERS = "0";
    private static final String STRANGERS = "1";
    private static final String DEVICE = "127.0.9.1";
    private static final int WARM_UP = 600;
    private static final long REST_MILLIS = 5;

    private final House house;
    private final int presses;
    private final int aSecond;
    private final Pace pace;

    private Disturbed(House house, int presses, int aSecond, Pace pace) {
        this.house = house;
        this.presses = presses;
        this.aSecond = aSecond;
        this.pace = pace;
    }

    public static void main(String... arguments) throws Exception {
        var numbers = Arrays.stream(arguments).mapToInt(Integer::parseInt).toArray();
        try (var house = House.open(Files.createTempDirectory("rinsebell-attack"), SERVERS);
                var pace = new Pace()) {
            new Disturbed(house, numbers.length > 0 ? numbers[0] : 1_000, numbers.length > 1 ? numbers[1] : 500, pace)
                    .measure();
        }
    }

    private void measure() throws Exception {
        pressed(WARM_UP);
        for (var way : Strangers.Way.values()) {
            var before = pressed(presses);
            var strangers = House.java(
                    STRANGERS,
                    Strangers.class.getName(),
                    List.of(way.name(), "" + house.port(), "" + house.securePort(), "" + aSecond));
            pace.passesMillis(5_000);
            var during = pressed(presses);
            strangers.destroyForcibly().onExit().join();
            pace.passesMillis(2_000);
            var after = pressed(presses);
            say(way, before, during, after);
        }
    }

    private void say(Strangers.Way way, Quantiles before, Quantiles during, Quantiles after) {
        var undisturbed = (before.millis(0.99) + after.millis(0.99)) / 2;
        System.out.printf(
                Locale.ROOT,
                "%s, %d times a second: %s; undisturbed before %s, after %s; p99 %.2f of it%n",
                way.name().toLowerCase(Locale.ROOT),
                aSecond,
                during,
                before,
                after,
                during.millis(0.99) / undisturbed);
    }

    private Line line() throws IOException {
        return new Line(DEVICE, house.securePort(), house.trust());
    }

    private Quantiles pressed(int times) throws IOException, ExecutionException, InterruptedException {
        var nanos = new long[times];
        try (var line = line()) {
            for (var i = 0; i < times; i++) {
                pace.passesMillis(REST_MILLIS);
                var begun = MACHINE.monotonicNanos();
                press(line, house.visits().get(i % house.visits().size()));
                nanos[i] = MACHINE.monotonicNanos() - begun;
            }
        }
        return new Quantiles(nanos);
    }

    private void press(Line line, long visit) throws IOException {
        var headers = "Cookie: __Host-device=" + house.key().text()
                + "\r\nContent-Type: application/json\r\nIdempotency-Key: " + UUID.randomUUID() + "\r\n";
        var answer = line.ask("POST /api/visits/" + visit + "/discomfort", headers, "{\"grade\":\"tingling\"}");
        if (answer.status() != 201) {
            throw new IOException("not accepted: " + answer);
        }
    }
}
