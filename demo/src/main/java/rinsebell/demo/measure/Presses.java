package rinsebell.demo.measure;

import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Presses}: answered presses a second over HTTP, from one
 * person and from eight at once, beside a bare file and a database that force as many bytes to the same disk.
 */
public final class Presses {
    private static final int CHAIRS = 8;
    private static final int EACH = 400;
    private static final int WARM_UP = 150;
    private static final String LOOK = "{\"level\":7,\"tone\":\"yellow\",\"again\":5}";

    private Presses() {}

    public static void main(String... arguments) throws Exception {
        try (var served = Served.with(CHAIRS)) {
            pressed(served, CHAIRS, WARM_UP);
            var before = served.journalBytes();
            var alone = pressed(served, 1, EACH);
            var bytes = (int) ((served.journalBytes() - before) / EACH);
            var together = pressed(served, CHAIRS, EACH / 2);
            System.out.printf(Locale.ROOT, "%d bytes a press in the journal%n", bytes);
            try (var yardstick = new ForcedDisk(bytes)) {
                say("one at once", alone, yardstick.file(1, 1), yardstick.database(1));
                say("eight at once", together, yardstick.file(1, CHAIRS), yardstick.database(CHAIRS));
            }
        }
    }

    private static void say(String who, Rate presses, Rate file, Rate database) {
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f answered presses a second; bare forced file %.0f/s (presses %.2f of it), H2 with CHECKPOINT "
                        + "SYNC %.0f/s (presses %.2f of it)%n",
                who,
                presses.perSecond(),
                file.perSecond(),
                presses.perSecond() / file.perSecond(),
                database.perSecond(),
                presses.perSecond() / database.perSecond());
    }

    /** Everybody looks at one strand after the other, at a chair of their own first. */
    private static Rate pressed(Served served, int people, int times) throws Exception {
        return Rate.together(IntStream.range(0, people)
                .mapToObj(person -> looking(served, person, times))
                .toList());
    }

    private static Callable<Rate> looking(Served served, int first, int times) {
        var heads = served.day().floor().openVisits();
        var next = new AtomicInteger(first);
        return () -> {
            try (var one = new Connection(served.port())) {
                return Rate.ofTimes(
                        times,
                        () -> press(
                                one,
                                heads.get(next.getAndIncrement() % CHAIRS).id().value()));
            }
        };
    }

    private static void press(Connection one, long visit) throws Exception {
        var answer =
                one.post("/api/visits/" + visit + "/strand", UUID.randomUUID().toString(), LOOK);
        if (answer.status() != 201) {
            throw new IllegalStateException("not accepted: " + answer);
        }
    }
}
