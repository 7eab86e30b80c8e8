package rinsebell.demo.browser;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rinsebell.demo.Ports;

/** The demo as a person starts it: a process of its own, with a port and a data folder that it keeps over a kill. */
final class RunningDemo implements AutoCloseable {
    private static final String READY = "ready on ";
    private static final String JAR =
            Path.of("main", "target", "rinsebell-demo.jar").toString();
    private static final List<String> DEMO = List.of("-jar", JAR);
    private static final List<String> SALON = List.of("-cp", JAR, "rinsebell.app.Main");

    private final List<String> program;
    private final Path data;
    private final Ports ports;
    private final List<String> more;
    private final Map<String, String> environment;
    private Process process;

    private RunningDemo(
            List<String> program, Path data, Ports ports, List<String> more, Map<String, String> environment)
            throws IOException {
        this.program = program;
        this.data = data;
        this.ports = ports;
        this.more = more;
        this.environment = environment;
        this.process = begun();
        awaitReady();
    }

    /**
     * Starts it; when this returns the floor is up.
     *
     * @param more further arguments
     */
    static RunningDemo in(Path data, String... more) throws IOException {
        return under(Map.of(), data, more);
    }

    /** The same, with more in its environment. */
    static RunningDemo under(Map<String, String> environment, Path data, String... more) throws IOException {
        return started(DEMO, environment, data, more);
    }

    /** The same program without the demo's day: a folder that holds nothing is a salon of which nothing is known. */
    static RunningDemo withNothing(Path data) throws IOException {
        return started(SALON, Map.of(), data);
    }

    private static RunningDemo started(List<String> program, Map<String, String> environment, Path data, String... more)
            throws IOException {
        return new RunningDemo(program, data, Ports.free(), List.of(more), environment);
    }

    private Process begun() throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var command = new ArrayList<>(List.of(java, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        command.addAll(List.of("-Xms32m", "-Xmx256m"));
        command.addAll(ReadClasses.of(JAR));
        command.addAll(program);
        command.addAll(
                List.of("--port", "" + ports.plain(), "--secure-port", "" + ports.secure(), "--data", data.toString()));
        command.addAll(more);
        var builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(environment);
        return builder.start();
    }

    private void awaitReady() throws IOException {
        // The stream stays open: a process whose output nobody takes stops at some point.
        var first = process.inputReader(UTF_8).readLine();
        if (first == null || !first.startsWith(READY)) {
            kill();
            throw new IllegalStateException("the demo says this instead of being ready: " + first);
        }
    }

    String url() {
        return ports.url();
    }

    /** Over HTTPS, where it was told to serve that. */
    String secureUrl() {
        return ports.secureUrl();
    }

    /** Ends it as a power cut does: nothing is written or closed any more. */
    void kill() {
        process.destroyForcibly().onExit().join();
    }

    /** How long processors have worked for it. */
    Duration processorTime() {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** Sends it a signal, such as {@code STOP}. */
    void signal(String name) throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-" + name, "" + process.pid()).start().waitFor();
    }

    /** Starts it anew on the same data and port. */
    void startAgain() throws IOException {
        startAgain(this);
    }

    /** Starts them all anew at the same moment, so that whatever else the machine does slows them alike. */
    static void startAgain(RunningDemo... all) throws IOException {
        for (var one : all) {
            one.process = one.begun();
        }
        for (var one : all) {
            one.awaitReady();
        }
    }

    @Override
    public void close() {
        kill();
    }
}
