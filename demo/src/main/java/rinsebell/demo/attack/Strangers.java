package rinsebell.demo.attack;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.net.ssl.SSLContext;
import rinsebell.demo.measure.Pace;

/** {@code Strangers WAY PORT SECURE-PORT A-SECOND}: means harm in one way until its process is ended. */
final class Strangers {
    private static final int MANY = 1_000;
    private static final int PEOPLE = 8;
    private static final String NEXT = "127.0.%d.%d";

    private final int port;
    private final SSLContext trust;
    private final long restNanos;
    private final AtomicInteger turn = new AtomicInteger();

    private Strangers(int port, SSLContext trust, int aSecond) {
        this.port = port;
        this.trust = trust;
        this.restNanos = TimeUnit.SECONDS.toNanos(1) / aSecond;
    }

    /** What they do. */
    enum Way {
        /** A thousand streams are asked for, and their connections kept; whichever is closed is opened again. */
        IDLE,
        /** A thousand requests whose heads never end. */
        SLOW,
        /** Streams are asked for again and again over a few connections. */
        FLOOD,
        /** Connections are opened, and closed again after the handshake. */
        HANDSHAKES
    }

    public static void main(String... arguments) throws Exception {
        var strangers = new Strangers(
                Integer.parseInt(arguments[2]),
                House.trust(Integer.parseInt(arguments[1])),
                Integer.parseInt(arguments[3]));
        var way = Way.valueOf(arguments[0]);
        try (var pace = new Pace()) {
            strangers.go(way, pace);
        }
    }

    private void go(Way way, Pace pace) throws ExecutionException, InterruptedException {
        var hands = Executors.newFixedThreadPool(PEOPLE);
        for (var i = 1; i < PEOPLE; i++) {
            var unused = hands.submit(() -> {
                work(way, pace);
                return null;
            });
        }
        work(way, pace);
    }

    /** Each of them does an eighth of it. */
    private void work(Way way, Pace pace) throws ExecutionException, InterruptedException {
        var kept = new ArrayDeque<Line>();
        var most = way == Way.FLOOD ? 1 : MANY / PEOPLE;
        while (!Thread.currentThread().isInterrupted()) {
            pace.passes(restNanos * PEOPLE);
            try {
                var line = kept.size() < most ? new Line(address(), port, trust) : kept.remove();
                if (way == Way.HANDSHAKES) {
                    line.close();
                } else {
                    speak(way, line);
                    kept.add(line);
                }
            } catch (IOException cutOff) {
                // As they deserve; they come again.
            }
        }
    }

    private static void speak(Way way, Line line) throws IOException {
        if (way == Way.SLOW) {
            line.goesOn();
        } else {
            line.ask("GET /feed?board=floor", "", "");
        }
    }

    /** Twenty of them come in turn. */
    private String address() {
        var next = turn.incrementAndGet() % 20;
        return String.format(NEXT, 1, 1 + next);
    }
}
