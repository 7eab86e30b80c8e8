package rinsebell.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** {@code demo/run}, as a visitor types it, on a machine where the program has been built. */
class RunIT {
    private static final Path SCRIPT = Path.of("run").toAbsolutePath();
    private static final List<String> SMALL_TOOLS = List.of("bash", "dirname", "find", "sed");

    @TempDir
    private Path folder = Path.of("");

    private final List<Process> started = new ArrayList<>();

    @AfterEach
    void stop() {
        started.forEach(Process::destroyForcibly);
    }

    @Test
    void theNextStartGoesOnWithTheSameDay() throws Exception {
        var first = run("--port", "0", "--data", data(), "--speed", "30");
        var bells = page(ready(first), "/bells");
        assertThat(bells).contains("/visits/");
        interrupt(first);
        assertThat(first.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(first.exitValue()).as("stopped by Ctrl-C").isEqualTo(130);
        assertThat(said(first)).isEmpty();
        var again = run("--port", "0", "--data", data());
        assertThat(heads(page(ready(again), "/bells"))).containsAll(heads(bells));
    }

    @Test
    void saysThatThereIsNoJdk() throws Exception {
        var process = run(tools("bare"), "--port", "0", "--data", data());
        assertEnds(process, 1, "needs a JDK 17 or newer, and none is here");
    }

    @Test
    void saysThatThereIsNoMavenWhereSomethingMustBeBuilt() throws Exception {
        var clone = Files.createDirectories(folder.resolve("clone").resolve("demo"));
        var script = Files.copy(SCRIPT, clone.resolve("run"));
        var process = start(script, withJava(), "--port", "0");
        assertEnds(process, 1, "needs Maven 3.8 or newer to be built, and none is here");
    }

    @Test
    void aChoiceThatMakesNoSenseIsExplained() throws Exception {
        assertEnds(run("--speed", "quick"), 2, "--speed");
        assertThat(folder.resolve("data")).doesNotExist();
    }

    /** In this process: how it gets out of the script is seen above. */
    @ParameterizedTest
    @CsvSource({"--port, x", "--port, 70000", "--speed, 0", "--speed, 61", "--nonsense, x"})
    void soIsEveryOther(String option, String value) {
        assertEndsHere(2, option, "--data", data(), option, value);
        assertThat(folder.resolve("data")).doesNotExist();
    }

    @Test
    void aTakenPortIsExplained() throws Exception {
        try (var taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            var port = "" + taken.getLocalPort();
            assertEnds(run("--port", port, "--data", data()), 1, "Port " + port + " is taken");
        }
    }

    @Test
    void aFolderThatIsAFileIsExplained() throws Exception {
        var file = Files.writeString(folder.resolve("file"), "");
        assertEndsHere(1, "choose another with --data", "--port", "0", "--data", file.toString());
    }

    private static void assertEndsHere(int code, String saying, String... arguments) {
        var said = new StringWriter();
        assertThat(new CommandLine(new Main()).setErr(new PrintWriter(said)).execute(arguments))
                .isEqualTo(code);
        assertThat(said.toString()).contains(saying).doesNotContain("\tat ");
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private Process run(String... arguments) throws IOException {
        return run(withJava(), arguments);
    }

    private Process run(Path path, String... arguments) throws IOException {
        return start(SCRIPT, path, arguments);
    }

    /** Whoever built the program is not there: the script must not want to build it again. */
    private Process start(Path script, Path path, String... arguments) throws IOException {
        // Tests that run in the background of a shell would hand down that Ctrl-C is to be ignored.
        var command = new ArrayList<>(List.of(
                "/usr/bin/env", "--default-signal=INT", path.resolve("bash").toString(), script.toString()));
        command.addAll(List.of(arguments));
        var builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().keySet().retainAll(List.of("HOME", "LANG"));
        builder.environment().put("PATH", path.toString());
        var process = builder.start();
        started.add(process);
        return process;
    }

    private static Path withJava() throws IOException {
        var path = tools("with-java");
        for (var tool : List.of("java", "javac")) {
            link(path.resolve(tool), Path.of(System.getProperty("java.home"), "bin", tool));
        }
        return path;
    }

    private static Path tools(String name) throws IOException {
        var path = Files.createDirectories(Path.of("target", "run-it", name).toAbsolutePath());
        for (var tool : SMALL_TOOLS) {
            link(path.resolve(tool), Path.of("/usr/bin", tool));
        }
        return path;
    }

    private static void link(Path from, Path to) throws IOException {
        if (!Files.exists(from)) {
            Files.createSymbolicLink(from, to);
        }
    }

    private static String ready(Process process) throws IOException {
        BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
        var line = out.readLine();
        assertThat(line)
                .as("the one line, or else: %s", line == null ? said(process) : "")
                .matches("ready on http://localhost:\\d+");
        return line.substring("ready on ".length());
    }

    private static void interrupt(Process process) throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-INT", "" + process.pid()).start().waitFor();
    }

    private static String page(String url, String path) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create(url + path)).build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString()).body();
    }

    private static List<String> heads(String page) {
        return Pattern.compile("/visits/\\d+")
                .matcher(page)
                .results()
                .map(MatchResult::group)
                .distinct()
                .toList();
    }

    private static void assertEnds(Process process, int code, String saying) throws Exception {
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(said(process)).contains(saying).doesNotContain("\tat ");
        assertThat(process.exitValue()).isEqualTo(code);
        assertThat(process.inputReader().readLine()).isNull();
    }

    private static String said(Process process) throws IOException {
        return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    }
}
