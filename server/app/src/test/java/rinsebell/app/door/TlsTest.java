package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLSocket;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;

/** Which TLS is spoken (RFC 9325; OWASP ASVS 5.0, 12.1.1 and 12.1.2). */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TlsTest {
    /** RFC 8446, section 6.2: what a server says to whoever speaks no version that it speaks. */
    private static final byte ALERT = 21;

    private static final byte PROTOCOL_VERSION = 70;

    /** RFC 8446, appendix B.4, and those of RFC 9325, section 4.2, and RFC 7905 that a key on a curve can serve. */
    private static final Set<String> RECOMMENDED = Set.of(
            "TLS_AES_128_GCM_SHA256",
            "TLS_AES_256_GCM_SHA384",
            "TLS_CHACHA20_POLY1305_SHA256",
            "TLS_ECDHE_ECDSA_WITH_AES_128_GCM_SHA256",
            "TLS_ECDHE_ECDSA_WITH_AES_256_GCM_SHA384",
            "TLS_ECDHE_ECDSA_WITH_CHACHA20_POLY1305_SHA256");

    private ServerUnderTest server;
    private SSLContext trust;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        var made = new TestCertificate(folder, "EC", "-1d", 30);
        var shown = new Shown(Certificate.read(made.certificate(), made.key(), new MachineTime().wall()));
        server = new ServerUnderTest(List.of(), shown);
        trust = made.trust();
    }

    @AfterAll
    void close() {
        server.close();
    }

    private SSLSocket socket() throws IOException {
        return (SSLSocket) trust.getSocketFactory().createSocket(InetAddress.getLoopbackAddress(), server.securePort());
    }

    @Test
    void theNewestIsPreferredAndTheOneBeforeIsSpoken() throws Exception {
        try (var newest = socket();
                var before = socket()) {
            newest.startHandshake();
            assertThat(newest.getSession().getProtocol()).isEqualTo("TLSv1.3");
            before.setEnabledProtocols(new String[] {"TLSv1.2"});
            before.startHandshake();
            assertThat(before.getSession().getProtocol()).isEqualTo("TLSv1.2");
        }
    }

    /** By hand, since no JDK of today lets a program say so. */
    @ParameterizedTest
    @ValueSource(bytes = {0, 1, 2})
    void noOlderVersionIsSpoken(byte minor) throws Exception {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), server.securePort())) {
            socket.getOutputStream().write(hello(minor));
            var answer = socket.getInputStream().readNBytes(7);
            assertThat(answer[0]).isEqualTo(ALERT);
            assertThat(answer[6]).isEqualTo(PROTOCOL_VERSION);
        }
    }

    /** A ClientHello (RFC 4346, section 7.4.1.2) with one suite that every server of then had. */
    private static byte[] hello(byte minor) throws IOException {
        var hello = new ByteArrayOutputStream();
        hello.write(new byte[] {3, minor});
        hello.write(new byte[32]);
        hello.write(new byte[] {0, 0, 2, 0, 0x2f, 1, 0});
        var body = hello.toByteArray();
        var record = new ByteArrayOutputStream();
        record.write(new byte[] {22, 3, minor, 0, (byte) (body.length + 4), 1, 0, 0, (byte) body.length});
        record.write(body);
        return record.toByteArray();
    }

    @Test
    void onlyRecommendedSuitesAreTaken() throws Exception {
        var taken = new TreeSet<String>();
        for (String suite : trust.getSupportedSSLParameters().getCipherSuites()) {
            try (var socket = socket()) {
                socket.setEnabledCipherSuites(new String[] {suite});
                socket.startHandshake();
                taken.add(suite);
            } catch (SSLException | IllegalArgumentException refused) {
                // By the server, or by this JDK, which has no version for it.
            }
        }
        assertThat(taken).containsExactlyInAnyOrderElementsOf(RECOMMENDED);
    }
}
