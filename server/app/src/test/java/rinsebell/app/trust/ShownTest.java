package rinsebell.app.trust;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.TimeByHand;

/** A renewal under a running server, as the JDK's own TLS sees it. */
class ShownTest {

    /** The JDK asks the machine's clock whether a certificate holds, so time must stay close to it. */
    private final TimeByHand time = new TimeByHand(new MachineTime().wall().minus(Duration.ofDays(80)));

    @TempDir
    private Path folder = Path.of("");

    private SecureDoor door;
    private ServerUnderTest server;
    private SSLContext device;

    @BeforeEach
    void open() throws Exception {
        Whereabouts here = new Whereabouts(Set.of("colour.test"), InetAddress.getLoopbackAddress());
        door = SecureDoor.byOwnAuthority(folder.resolve("tls"), here, time);
        server = new ServerUnderTest(List.of(routes -> routes.get("/", ctx -> ctx.result("here"))), door.shown());
        device = new Validating(door.authority().orElseThrow().root()).connecting();
    }

    @AfterEach
    void close() {
        server.close();
        door.close();
    }

    @Test
    void theNextConnectionSeesTheNewOneAndAnOpenOneLivesOn() throws Exception {
        try (SSLSocket before = connected("localhost")) {
            assertThat(answer(before)).startsWith("HTTP/1.1 200").endsWith("here");
            X509Certificate first = peer(before);
            time.sleep(Duration.ofDays(80));
            door.round();
            assertThat(answer(before)).startsWith("HTTP/1.1 200").endsWith("here");
            try (SSLSocket after = connected("colour.test")) {
                assertThat(answer(after)).startsWith("HTTP/1.1 200").endsWith("here");
                assertThat(peer(after)).isNotEqualTo(first);
                assertThat(peer(after).getNotAfter().toInstant())
                        .isEqualTo(first.getNotAfter().toInstant().plus(Duration.ofDays(80)));
            }
            assertThat(answer(before)).startsWith("HTTP/1.1 200").endsWith("here");
        }
    }

    /** RFC 9325, section 4.2. */
    @Test
    void noCipherIsObsolete() throws Exception {
        try (SSLSocket old = before13()) {
            old.setEnabledCipherSuites(
                    new String[] {"TLS_ECDHE_ECDSA_WITH_AES_256_CBC_SHA384", "TLS_ECDHE_ECDSA_WITH_AES_128_CBC_SHA256"
                    });
            assertThatThrownBy(old::startHandshake).isInstanceOf(SSLException.class);
        }
    }

    private SSLSocket before13() throws IOException {
        SSLSocket socket = (SSLSocket)
                device.getSocketFactory().createSocket(InetAddress.getLoopbackAddress(), server.securePort());
        socket.setEnabledProtocols(new String[] {"TLSv1.2"});
        return socket;
    }

    private static X509Certificate peer(SSLSocket socket) throws IOException {
        Certificate[] chain = socket.getSession().getPeerCertificates();
        return (X509Certificate) chain[0];
    }

    /** Whoever is called by a name looks for that name in the certificate (RFC 9525). */
    private SSLSocket connected(String name) throws IOException {
        Socket way = new Socket(InetAddress.getLoopbackAddress(), server.securePort());
        SSLSocket socket = (SSLSocket) device.getSocketFactory().createSocket(way, name, server.securePort(), true);
        SSLParameters parameters = socket.getSSLParameters();
        parameters.setEndpointIdentificationAlgorithm("HTTPS");
        socket.setSSLParameters(parameters);
        socket.startHandshake();
        return socket;
    }

    private String answer(SSLSocket socket) throws IOException {
        String request = "GET / HTTP/1.1\r\nHost: localhost:" + server.securePort() + "\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(US_ASCII));
        StringBuilder answer = new StringBuilder();
        while (!answer.toString().endsWith("here")) {
            int next = socket.getInputStream().read();
            if (next < 0) {
                break;
            }
            answer.append((char) next);
        }
        return answer.toString();
    }
}
