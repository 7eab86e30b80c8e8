package rinsebell.demo.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import rinsebell.app.time.MachineTime;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.StartAndMemory}: how long the program takes from its command
 * to the ready line, the demo's day already told; how long after kill -9 from its command to the bells that ring, on a
 * screen; and how much memory it holds when it rests, beside a JVM that does nothing.
 */
public final class StartAndMemory {
    private static final int STARTS = 7;
    private static final int PAGES = 40;
    private static final String READY = "ready on http://localhost:";
    private static final MachineTime MACHINE = new MachineTime();
    /** A bell in the strip of what rings, as the feed writes it. */
    private static final String RINGS = "class=\\\"bell ";

    private static final int KILO = 1024;

    /** As proc(5) tells it. */
    private static final Pattern VM_RSS = Pattern.compile("VmRSS:\\s*(\\d+) kB");

    private static final Pattern HEAP_USED = Pattern.compile("(?:generation).* used (\\d+)K");
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin");

    private final Path jar;
    private final Path data;

    private StartAndMemory(Path jar, Path data) {
        this.jar = jar;
        this.data = data;
    }

    public static void main(String... arguments) throws IOException, InterruptedException {
        var place = Files.createTempDirectory("rinsebell-measure");
        var jar = Path.of(System.getProperty("java.class.path")).toAbsolutePath();
        new StartAndMemory(jar, place.resolve("data")).measure();
        Served.delete(place);
    }

    private void measure() throws IOException, InterruptedException {
        startToReady();
        var nothing = new ArrayList<Long>();
        var ready = new ArrayList<Long>();
        for (var i = 0; i < STARTS; i++) {
            nothing.add(jvmAlone());
            ready.add(startToReady());
        }
        System.out.printf(
                Locale.ROOT,
                "start to ready, middle of %d: %d ms, fastest %d ms; a JVM that says its version %d ms (%.1f times)%n",
                STARTS,
                middle(ready),
                ready.stream().mapToLong(one -> one).min().orElseThrow(),
                middle(nothing),
                (double) middle(ready) / middle(nothing));
        killedToBells();
        atRest();
    }

    private void killedToBells() throws IOException, InterruptedException {
        var took = new ArrayList<Long>();
        for (var i = 0; i < STARTS; i++) {
            var server = server();
            port(server);
            server.destroyForcibly().waitFor();
            took.add(startToBells());
        }
        System.out.printf(
                "kill -9, then start to the bells that ring, middle of %d: %d ms, slowest %d ms%n",
                STARTS, middle(took), took.stream().mapToLong(one -> one).max().orElseThrow());
    }

    private long startToBells() throws IOException, InterruptedException {
        var start = MACHINE.monotonicNanos();
        var server = server();
        try (var screen = new Connection(port(server))) {
            if (!screen.get("/feed/once?board=floor", "").body().contains(RINGS)) {
                throw new IOException("nothing rings");
            }
            return millisSince(start);
        } finally {
            stop(server);
        }
    }

    private static long middle(List<Long> all) {
        return all.stream().sorted().toList().get(all.size() / 2);
    }

    private static long jvmAlone() throws IOException, InterruptedException {
        var start = MACHINE.monotonicNanos();
        new ProcessBuilder(tool("java"), "-XX:+UseSerialGC", "--version")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        return millisSince(start);
    }

    private long startToReady() throws IOException, InterruptedException {
        var start = MACHINE.monotonicNanos();
        var server = server();
        try {
            port(server);
            return millisSince(start);
        } finally {
            stop(server);
        }
    }

    private void atRest() throws IOException, InterruptedException {
        var server = server();
        try {
            try (var screen = new Connection(port(server))) {
                for (var i = 0; i < PAGES; i++) {
                    screen.get("/", "");
                }
            }
            run(tool("jcmd"), "" + server.pid(), "GC.run");
            var heap = run(tool("jcmd"), "" + server.pid(), "GC.heap_info");
            System.out.printf(
                    "at rest after %d pages and a collection: %d MB resident, %d MB of them live on the heap%n",
                    PAGES,
                    megabytes(VM_RSS, Files.readString(Path.of("/proc", "" + server.pid(), "status"))),
                    megabytes(HEAP_USED, heap));
        } finally {
            stop(server);
        }
    }

    /** The sum of all figures in kilobytes that follow such words. */
    private static long megabytes(Pattern kilobytes, String said) {
        return kilobytes
                        .matcher(said)
                        .results()
                        .mapToLong(found -> Long.parseLong(found.group(1)))
                        .sum()
                / KILO;
    }

    private Process server() throws IOException {
        var command = new ArrayList<>(List.of(tool("java"), "-XX:+UseSerialGC"));
        command.addAll(List.of("-Xms32m", "-Xmx256m"));
        command.addAll(List.of("-jar", jar.toString(), "--port", "0", "--data", data.toString()));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static int port(Process server) throws IOException {
        var line = server.inputReader().readLine();
        if (line == null || !line.startsWith(READY)) {
            throw new IOException("the server did not start");
        }
        return Integer.parseInt(line.substring(READY.length()));
    }

    private static void stop(Process server) throws InterruptedException {
        server.destroy();
        server.waitFor(1, TimeUnit.MINUTES);
    }

    private static String run(String... command) throws IOException, InterruptedException {
        var process = new ProcessBuilder(command).start();
        var said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }

    private static String tool(String name) {
        return JAVA.resolve(name).toString();
    }

    private static long millisSince(long startNanos) {
        return TimeUnit.NANOSECONDS.toMillis(MACHINE.monotonicNanos() - startNanos);
    }
}
