package rinsebell.demo.kill;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** One process of the real server, from its start to its violent end. */
final class Life implements AutoCloseable {
    private final Process process;
    private final Path said;

    /**
     * How servers are started.
     *
     * @param jar the program
     * @param archive classes of it as the JVM wants them, made by {@link #archive}; it starts twice as fast with them
     * @param data the folder that it works in
     * @param port on which it will listen
     */
    record Way(Path jar, Path archive, Path data, int port) {}

    private Life(Process process, Path said) {
        this.process = process;
        this.said = said;
    }

    /** Starts a server and does not wait for it. */
    static Life begin(Way way) throws IOException {
        return start(way, "-XX:SharedArchiveFile=" + way.archive());
    }

    /** Lets one server start and stop in order, and keep its classes for those to come. */
    static void archive(Way way) throws IOException, InterruptedException {
        try (var first = start(way, "-XX:ArchiveClassesAtExit=" + way.archive())) {
            first.awaitReady();
            first.process.destroy();
            first.process.waitFor(1, TimeUnit.MINUTES);
        }
    }

    private static Life start(Way way, String archive) throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var said = way.data().resolveSibling("server.log");
        var command = new ArrayList<>(List.of(java, archive, "-Xlog:disable", "-Xlog:all=error:stderr"));
        command.addAll(List.of(
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-jar",
                way.jar().toString()));
        command.addAll(List.of("--port", "" + way.port(), "--data", way.data().toString()));
        var log = ProcessBuilder.Redirect.appendTo(new File(said.toString()));
        return new Life(new ProcessBuilder(command).redirectError(log).start(), said);
    }

    /**
     * Waits for the line that a person waits for.
     *
     * @throws IOException when the server ends without it
     */
    void awaitReady() throws IOException {
        var line = process.inputReader(StandardCharsets.UTF_8).readLine();
        if (line == null || !line.startsWith("ready on ")) {
            throw new IOException("the server did not start: " + Files.readString(said));
        }
    }

    /** Sends, after so many milliseconds, the signal that no process can hear: nothing is written or closed any more. */
    CompletableFuture<Process> killIn(long millis) {
        return process.onExit()
                .completeOnTimeout(process, millis, TimeUnit.MILLISECONDS)
                .thenCompose(Life::killed);
    }

    private static CompletableFuture<Process> killed(Process process) {
        process.destroyForcibly();
        return process.onExit();
    }

    /** Kills it where it still lives, and waits until the system has taken everything back. */
    @Override
    public void close() {
        killed(process).join();
    }
}
