package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.jetty.server.Request;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.http.RawHttp2;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;

/**
 * Whatever strangers do, a device that is in is answered. Everybody comes from an address of their own: a whole network of
 * them is this machine (RFC 1122, section 3.2.1.3, 127.0.0.0/8).
 */
class StrangersTest {
    private static final String OURS = "Cookie: device=ours\r\n";
    private static final String DEVICE = "127.0.9.1";

    /** Larger than what a connection takes without anybody reading. */
    private static final byte[] LARGE = new byte[4_000_000];

    @TempDir
    private Path folder = Path.of("");

    private final AtomicInteger served = new AtomicInteger();
    private final List<AutoCloseable> open = new ArrayList<>();
    private TestCertificate made;
    private ServerUnderTest server;

    @BeforeEach
    void start() throws Exception {
        made = new TestCertificate(folder, "EC", "-1d", 30);
        var shown = new Shown(
                Certificate.read(made.certificate(), made.key(), Instant.ofEpochMilli(new MachineTime().wallMillis())));
        server = new ServerUnderTest(
                List.of(routes -> {
                    routes.get("/", ctx -> ctx.result("page " + served.incrementAndGet()));
                    routes.get("/large", ctx -> ctx.result(new ByteArrayInputStream(LARGE)));
                    routes.post("/press", ctx -> ctx.result("" + Bodies.of(ctx).length));
                }),
                shown,
                StrangersTest::isOurs);
    }

    private static boolean isOurs(Request request) {
        return Cookies.of(request, "device").filter("ours"::equals).isPresent();
    }

    @AfterEach
    void close() throws Exception {
        for (AutoCloseable one : open) {
            one.close();
        }
        server.close();
    }

    private Socket from(String address) throws IOException {
        var socket = new Socket();
        open.add(socket);
        // Little is on its way to whoever reads nothing.
        socket.setReceiveBufferSize(4_096);
        socket.bind(new InetSocketAddress(InetAddress.getByName(address), 0));
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
        socket.setSoTimeout(20_000);
        return socket;
    }

    private String head(String what, String headers) {
        return what + " HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\n" + headers;
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
    }

    /** The status of the next answer; -1 where there is none. */
    private static int status(Socket socket) throws IOException {
        var line = new StringBuilder();
        try {
            for (int next = socket.getInputStream().read(); next >= 0 && next != '\n'; ) {
                line.append((char) next);
                next = socket.getInputStream().read();
            }
        } catch (SocketException gone) {
            return -1;
        }
        return line.isEmpty() ? -1 : Integer.parseInt(line.toString().split(" ")[1]);
    }

    private int ask(String from, String what, String headers) throws IOException {
        try (var socket = from(from)) {
            send(socket, head(what, headers + "Connection: close\r\n\r\n"));
            return status(socket);
        }
    }

    private void assertADeviceIsServed() {
        await().during(Duration.ofMillis(200)).atMost(Duration.ofSeconds(10)).untilAsserted(() -> {
            assertThat(ask(DEVICE, "GET /", OURS)).isEqualTo(200);
            assertThat(ask(DEVICE, "POST /press", OURS + pressed() + "Content-Length: 0\r\n"))
                    .isEqualTo(200);
        });
    }

    private static String pressed() {
        return "Idempotency-Key: aaaaaaaa\r\nContent-Type: application/x-www-form-urlencoded\r\n";
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "GET / HTTP/1.1\r\nHost: x"})
    void aThousandConnectionsThatSayNothingGiveWay(String begun) throws Exception {
        try (var device = from(DEVICE)) {
            send(device, head("GET /", OURS + "\r\n"));
            assertThat(status(device)).isEqualTo(200);
            device.getInputStream().skipNBytes(device.getInputStream().available());
            List<Socket> idle = new ArrayList<>();
            for (int i = 0; i < 1_000; i++) {
                var socket = from("127.0.1." + (1 + i % 20));
                idle.add(socket);
                send(socket, begun);
            }
            assertADeviceIsServed();
            assertThat(ask("127.0.2.1", "GET /", "")).as("another stranger").isEqualTo(200);
            int most = CrowdLimits.usual().connections();
            assertThat(open(idle)).isLessThanOrEqualTo(most).isGreaterThan(most - 40);
            send(device, head("GET /", OURS + "\r\n"));
            await().until(() -> device.getInputStream().available() > 0);
            assertThat(device.getInputStream().read())
                    .as("the connection of before")
                    .isNotNegative();
        }
    }

    /** On which nothing was said, and nothing was closed. */
    private static long open(List<Socket> sockets) throws IOException {
        long open = 0;
        for (Socket socket : sockets) {
            socket.setSoTimeout(1);
            try {
                open += socket.getInputStream().read() < 0 ? 0 : 1;
            } catch (java.net.SocketTimeoutException silent) {
                open++;
            } catch (SocketException reset) {
                open += 0;
            }
        }
        return open;
    }

    @Test
    void oneAddressMayNotAskForEver() throws Exception {
        var limits = CrowdLimits.usual();
        try (var stranger = from("127.0.3.1")) {
            int answered = 0;
            for (int i = 0; i < 3 * limits.burst(); i++) {
                try {
                    send(stranger, head("HEAD /", "\r\n"));
                } catch (SocketException closed) {
                    break;
                }
                answered = served.get();
            }
            assertThat(answered).isLessThan(2 * limits.burst());
            assertThat(stranger.getInputStream().readAllBytes()).isNotEmpty();
        } catch (SocketException reset) {
            assertThat(served.get()).isLessThan(2 * limits.burst());
        }
        assertThat(ask("127.0.3.1", "GET /", "")).as("from there again").isEqualTo(-1);
        assertThat(ask("127.0.3.2", "GET /", "")).as("from elsewhere").isEqualTo(200);
        assertADeviceIsServed();
    }

    /** A body that comes bit by bit holds a thread, and there is a share of those for strangers. */
    @Test
    void slowBodiesOfStrangersMakeNoPressWait() throws Exception {
        for (int i = 0; i < 200; i++) {
            send(from("127.0.4." + (1 + i % 10)), head("POST /press", pressed() + "Content-Length: 2\r\n\r\na"));
        }
        try (var slow = from(DEVICE)) {
            send(slow, head("POST /press", OURS + pressed() + "Content-Length: 2\r\n\r\na"));
            assertADeviceIsServed();
            send(slow, "b");
            assertThat(status(slow)).as("a press in two packets").isEqualTo(200);
        }
    }

    /** Each answer that is not taken holds a thread; a server has 250. */
    @Test
    void answersThatStrangersDoNotTakeMakeNobodyWait() throws Exception {
        for (int i = 0; i < 300; i++) {
            send(from("127.0.5." + (1 + i % 30)), head("GET /large", "\r\n"));
        }
        assertADeviceIsServed();
    }

    /** The same with two connections of HTTP/2: a window in which nothing fits (RFC 9113, section 10.5). */
    @Test
    void streamsThatStrangersDoNotTakeMakeNobodyWait() throws Exception {
        for (int i = 0; i < 3; i++) {
            var greedy = new RawHttp2(made.trust(), "127.0.6." + (1 + i), server.securePort(), Map.of(4, 0));
            open.add(greedy);
            for (int stream = 1; stream < 250; stream += 2) {
                greedy.get(stream, "/", Map.of());
            }
        }
        await().until(() -> served.get() >= CrowdLimits.usual().atOnceFromOne());
        assertADeviceIsServed();
        assertThat(served.get()).isLessThan(250);
    }
}
