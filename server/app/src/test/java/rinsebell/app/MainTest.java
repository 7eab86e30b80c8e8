package rinsebell.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
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
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import rinsebell.app.http.RawHttp;
import rinsebell.app.http.TestCertificate;

/** The real process, started as a person starts it. */
class MainTest {

    @TempDir
    private Path folder = Path.of("");

    private final List<Process> started = new ArrayList<>();

    @AfterEach
    void stop() {
        started.forEach(Process::destroyForcibly);
    }

    @Test
    void saysReadyOnceItAnswersAndStopsWhenAsked() throws Exception {
        Process server = start("--port", "0", "--data", data());
        BufferedReader out = server.inputReader(StandardCharsets.UTF_8);
        String ready = out.readLine();
        assertThat(ready).matches("ready on http://localhost:\\d+");
        assertThat(status(ready.substring("ready on ".length()) + "/nowhere")).isEqualTo(404);
        server.toHandle().destroy();
        assertThat(server.waitFor(10, TimeUnit.SECONDS)).isTrue();
        assertThat(server.exitValue()).isEqualTo(143);
        assertThat(out.readLine()).as("anything after the ready line").isNull();
        assertThat(said(server)).as("anything beside it").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "--port, x",
        "--port, -1",
        "--port, 65536",
        "--port, 99999999999",
        "--host, no such host",
        "--host, 0.0.0.0",
        "--secure-port, 65536",
        "--name, salon.local/x",
        "--nonsense, x"
    })
    void aChoiceThatMakesNoSenseIsExplained(String option, String value) {
        assertNotAChoice(
                Set.of("--nonsense", "--name").contains(option) ? option : value, "--data", data(), option, value);
    }

    /** Of a process of its own it would be no other; how its exit code gets out is seen with the folder without a name. */
    private static void assertNotAChoice(String reason, String... arguments) {
        StringWriter said = new StringWriter();
        StringWriter answered = new StringWriter();
        int code = new CommandLine(new Main())
                .setErr(new PrintWriter(said))
                .setOut(new PrintWriter(answered))
                .execute(arguments);
        assertThat(code).isEqualTo(2);
        assertThat(said.toString()).contains(reason).doesNotContain("\tat ");
        assertThat(answered.toString()).isEmpty();
    }

    @Test
    void aCertificateIsServedAndOneThatCannotBeIsExplained() throws Exception {
        TestCertificate made = new TestCertificate(Files.createDirectory(folder.resolve("tls")), "EC", "-1d", 30);
        String certificate = made.certificate().toString();
        assertNotAChoice(
                "--certificate and --key go together", "--port", "0", "--data", data(), "--certificate", certificate);
        assertCannotStart(
                "There is no private key in",
                "--port",
                "0",
                "--data",
                data(),
                "--certificate",
                certificate,
                "--key",
                certificate);

        Process server = start(
                "--port",
                "0",
                "--secure-port",
                "0",
                "--data",
                data(),
                "--certificate",
                certificate,
                "--key",
                made.key().toString());
        BufferedReader out = server.inputReader(StandardCharsets.UTF_8);
        assertThat(out.readLine()).matches("ready on http://localhost:\\d+");
        String also = out.readLine();
        assertThat(also).matches("also on https://localhost:\\d+");
        HttpRequest request = HttpRequest.newBuilder(URI.create(also.substring("also on ".length()) + "/setup"))
                .build();
        var answer = HttpClient.newBuilder().sslContext(made.trust()).build().send(request, BodyHandlers.ofString());
        assertThat(answer.version()).isEqualTo(HttpClient.Version.HTTP_2);
        assertThat(answer.statusCode()).isEqualTo(200);
    }

    @Test
    void aTakenPortIsExplained() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertCannotStart(
                    "Port " + taken.getLocalPort() + " is taken",
                    "--data",
                    data(),
                    "--port",
                    "" + taken.getLocalPort());
            assertCannotStart(
                    "another port with --secure-port",
                    "--data",
                    data(),
                    "--port",
                    "0",
                    "--host",
                    "127.0.0.1",
                    "--open-to-network",
                    "--secure-port",
                    "" + taken.getLocalPort());
        }
    }

    @Test
    void aFolderThatIsAFileIsExplained() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "");
        assertCannotStart("cannot be written to", "--port", "0", "--data", file.toString());
        assertCannotStart(
                "cannot be written to",
                "--port",
                "0",
                "--data",
                file.resolve("in").toString());
    }

    @Test
    void aFolderThatAnotherServerHoldsIsExplained() throws Exception {
        try (RunningSalon first = new RunningSalon(folder.resolve("data"))) {
            assertThat(first.url()).isNotEmpty();
            assertCannotStart(start("--port", "0", "--data", data()), "Another Rinsebell already works in");
        }
    }

    /** The lock file is only a file: the database's own lock is the one that counts then. */
    @Test
    void aFolderWhoseLockWasDeletedIsStillHeld() throws Exception {
        try (RunningSalon first = new RunningSalon(folder.resolve("data"))) {
            assertThat(first.url()).isNotEmpty();
            Files.delete(folder.resolve("data/in-use.lock"));
            assertCannotStart(start("--port", "0", "--data", data()), "Another Rinsebell already works in");
        }
    }

    @Test
    void aDatabaseThatMayNotBeWrittenIsExplained() throws Exception {
        new RunningSalon(folder.resolve("data")).close();
        Files.setPosixFilePermissions(
                folder.resolve("data/rinsebell.mv.db"), PosixFilePermissions.fromString("r--r--r--"));
        assertCannotStart(startAs(ordinaryUser(), "--port", "0", "--data", data()), "this user may not read and write");
    }

    /** Who may do anything is not stopped by a file's permissions, so that right is given up. */
    private static List<String> ordinaryUser() {
        return System.getProperty("user.name").equals("root")
                ? List.of("setpriv", "--bounding-set=-dac_override")
                : List.of();
    }

    @Test
    void aDamagedJournalIsExplainedAndLeft() throws Exception {
        Path journal = Files.createDirectories(folder.resolve("data/journal")).resolve("journal-000000000001.txt");
        Files.writeString(journal, "no line of a journal\r\n");
        assertCannotStart("The journal was left as it is", "--port", "0", "--data", data());
        assertThat(journal).hasContent("no line of a journal\r\n");
    }

    @Test
    void aFolderWithoutANameIsNone() throws Exception {
        Process server = start("--port", "0", "--data", "");
        assertThat(server.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(server.exitValue()).isEqualTo(2);
        assertThat(said(server)).contains("--data needs the name of a folder").doesNotContain("\tat ");
    }

    @Test
    void anOpenNetworkIsAllowedAndWarnedOf() throws Exception {
        Process server = start("--port", "0", "--secure-port", "0", "--data", data(), "--open-to-network");
        BufferedReader out = server.inputReader(StandardCharsets.UTF_8);
        int port = URI.create(out.readLine().substring("ready on ".length())).getPort();
        assertThat(status(port, "rinsebell.local")).isEqualTo(200);
        assertThat(status(port, "example.org")).isEqualTo(421);
        assertThat(out.readLine()).matches("also on https://rinsebell\\.local:\\d+( https://\\S+)*");
        assertThat(out.readLine()).matches("other devices begin at http://\\S+:\\d+/trust");
        assertThat(out.readLine()).matches("SHA-256 fingerprint of what they trust:( [0-9A-F]{4}){16}");
        server.toHandle().destroy();
        assertThat(said(server)).contains("Warning").contains("by invitation only");
    }

    /** In this process, as far as the exit code: how that gets out is seen where another process holds the folder. */
    private static void assertCannotStart(String reason, String... arguments) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        ByteArrayOutputStream answered = new ByteArrayOutputStream();
        Start start = new Start(new PrintStream(answered), new PrintStream(said));
        assertThat(start.run(RunningSalon.settings(arguments), 1)).isEqualTo(1);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains(reason).doesNotContain("\tat ");
        assertThat(answered.size()).isZero();
    }

    private void assertCannotStart(Process server, String reason) throws Exception {
        assertThat(server.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(server.exitValue()).isEqualTo(1);
        assertThat(said(server)).contains(reason).doesNotContain("\tat ");
        assertThat(server.inputReader().readLine()).isNull();
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private Process start(String... arguments) throws IOException {
        return startAs(List.of(), arguments);
    }

    private Process startAs(List<String> before, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                ProcessHandle.current().info().command().orElseThrow(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).start();
        started.add(process);
        return process;
    }

    private static String said(Process process) throws IOException {
        return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static int status(int port, String host) throws IOException {
        return RawHttp.status(RawHttp.ask(
                port, "GET /trust HTTP/1.1\r\nHost: " + host + ":" + port + "\r\nConnection: close\r\n\r\n"));
    }

    private static int status(String url) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(url)).build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString()).statusCode();
    }
}
