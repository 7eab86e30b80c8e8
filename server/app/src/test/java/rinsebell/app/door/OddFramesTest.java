package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.http.RawHttp2;
import rinsebell.app.http.RawHttp2.Frame;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;

/** What RFC 9113, section 10.5, warns of: frames that cost their sender little and a server much. */
class OddFramesTest {
    private static final int MANY = 3_000;
    private static final byte[] CANCEL = {0, 0, 0, 8};

    @TempDir
    private Path folder = Path.of("");

    private final AtomicInteger served = new AtomicInteger();
    private TestCertificate made;
    private ServerUnderTest server;

    @BeforeEach
    void start() throws Exception {
        made = new TestCertificate(folder, "EC", "-1d", 30);
        var now = Instant.ofEpochMilli(new MachineTime().wallMillis());
        server = new ServerUnderTest(
                List.of(routes -> routes.get("/", ctx -> ctx.result("page " + served.incrementAndGet()))),
                new Shown(Certificate.read(made.certificate(), made.key(), now)));
    }

    @AfterEach
    void close() {
        server.close();
    }

    /** As the server's own screen, so that nothing but the protocol says no. */
    private RawHttp2 connected() throws Exception {
        return new RawHttp2(made.trust(), "127.0.0.1", server.securePort(), Map.of());
    }

    private interface Sending {
        void send(RawHttp2 to, int turn) throws IOException;
    }

    /** Sends until the other side hangs up; answers how often that went well. */
    private int untilCutOff(Sending sending) throws Exception {
        try (var wire = connected()) {
            for (int i = 0; i < MANY; i++) {
                try {
                    sending.send(wire, i);
                } catch (IOException cutOff) {
                    return i;
                }
            }
            Frame last = null;
            try {
                while (last == null || last.type() != RawHttp2.GOAWAY) {
                    last = wire.next();
                }
                return 0;
            } catch (java.net.SocketTimeoutException silent) {
                return MANY;
            } catch (IOException cutOff) {
                return 0;
            }
        }
    }

    @Test
    void aFloodOfPingsOrSettingsIsCutOff() throws Exception {
        assertThat(untilCutOff((to, turn) -> to.send(RawHttp2.PING, 0, 0, new byte[8])))
                .isLessThan(MANY);
        assertThat(untilCutOff((to, turn) -> to.send(RawHttp2.SETTINGS, 0, 0, new byte[] {0, 3, 0, 0, 0, 100})))
                .isLessThan(MANY);
    }

    /** Each request is begun, and taken back before it is answered (CVE-2023-44487). */
    @Test
    void requestsThatAreTakenBackAreCutOff() throws Exception {
        assertThat(untilCutOff((to, turn) -> {
                    to.get(2 * turn + 1, "/", Map.of());
                    to.send(RawHttp2.RST_STREAM, 0, 2 * turn + 1, CANCEL);
                }))
                .isLessThan(MANY);
        assertThat(served.get()).isLessThan(1_000);
    }

    /** A head without an end (VU#421644). */
    @Test
    void aHeadThatGoesOnForEverIsCutOff() throws Exception {
        assertThat(untilCutOff((to, turn) -> {
                    if (turn == 0) {
                        to.send(RawHttp2.HEADERS, RawHttp2.END_STREAM, 1, to.fields("/", Map.of()));
                    } else {
                        to.send(RawHttp2.CONTINUATION, 0, 1, to.fields("/", Map.of()));
                    }
                }))
                .isLessThan(MANY);
        assertThat(served.get()).isZero();
    }

    @Test
    void aConnectionHasSoManyStreams() throws Exception {
        try (var wire = connected()) {
            Frame frame = wire.next();
            while (frame.type() != RawHttp2.SETTINGS || frame.flags() != 0) {
                frame = wire.next();
            }
            var settings = ByteBuffer.wrap(frame.payload());
            int most = -1;
            while (settings.hasRemaining()) {
                int number = settings.getShort();
                int value = settings.getInt();
                most = number == 3 ? value : most;
            }
            assertThat(most).isEqualTo(128);
        }
    }

    @Test
    void headersHaveAnEndThereToo() throws Exception {
        try (var wire = connected()) {
            var large = new java.util.TreeMap<String, String>();
            for (int i = 0; i < 120; i++) {
                large.put("x-" + i, "y".repeat(100));
            }
            wire.get(1, "/", large);
            Frame frame = wire.next();
            while (frame.stream() != 1 && frame.type() != RawHttp2.GOAWAY) {
                frame = wire.next();
            }
            assertThat(served.get()).isZero();
        }
    }
}
