package rinsebell.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.restassured.RestAssured;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole server with both ports open, and the JDK's own client, which trusts what it was given and nobody else. */
class OpenedTest {

    private static final String[] OPENED = {
        "--open-to-network", "--host", "127.0.0.1", "--secure-port", "0", "--name", "colour.test"
    };

    @TempDir
    private Path folder = Path.of("");

    private static HttpResponse<byte[]> got(HttpClient client, String url) throws Exception {
        return client.send(HttpRequest.newBuilder(URI.create(url)).build(), BodyHandlers.ofByteArray());
    }

    private static HttpClient trusting(byte[] authority) throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setCertificateEntry(
                "it", CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(authority)));
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    @Test
    void bothPortsServeTheSameFloorAndTheSecureOneIsBelieved() throws Exception {
        try (RunningSalon salon = new RunningSalon(folder, OPENED)) {
            HttpClient plain = HttpClient.newHttpClient();
            byte[] authority = got(plain, salon.url() + "/trust/authority.crt").body();
            HttpClient device = trusting(authority);
            String secure = salon.secureUrl().replace("colour.test", "localhost");
            assertThatThrownBy(() -> got(plain, secure + "/")).isInstanceOf(SSLHandshakeException.class);
            HttpResponse<byte[]> page = got(device, secure + "/setup");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.version()).isEqualTo(HttpClient.Version.HTTP_2);
            assertThat(got(plain, salon.url() + "/setup").statusCode()).isEqualTo(200);
            for (String address : List.of(salon.url(), secure)) {
                HttpResponse<byte[]> answer = got(device, address + "/trust");
                assertThat(answer.statusCode()).isEqualTo(200);
                // There would be no way back to plain HTTP for a salon that closes itself off again (RFC 6797).
                assertThat(answer.headers().firstValue("Strict-Transport-Security"))
                        .isEmpty();
            }
            assertThat(got(device, secure + "/trust/authority.crt").body()).isEqualTo(authority);
        }
    }

    @Test
    void thePageForDevicesSaysNothingOfTheSalon() throws Exception {
        try (RunningSalon salon = new RunningSalon(folder, OPENED)) {
            RestAssured.given(salon.request())
                    .header("Idempotency-Key", UUID.randomUUID().toString())
                    .body(Map.of("name", "Pepperbox", "chairs", 3, "basins", 2, "bench", 2, "zone", "Europe/Berlin"))
                    .post("/api/salon")
                    .then()
                    .statusCode(201);
            HttpClient plain = HttpClient.newHttpClient();
            assertThat(new String(got(plain, salon.url() + "/").body())).contains("Pepperbox");
            assertThat(new String(got(plain, salon.url() + "/trust").body())).doesNotContain("Pepperbox");
        }
    }

    @Test
    void aServerThatIsNotOpenedHasNothingToTrust() throws Exception {
        try (RunningSalon salon = new RunningSalon(folder)) {
            assertThat(got(HttpClient.newHttpClient(), salon.url() + "/trust").statusCode())
                    .isEqualTo(404);
            assertThat(folder.resolve("tls")).doesNotExist();
        }
    }
}
