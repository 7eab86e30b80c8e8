package rinsebell.app.trust;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.cert.CertificateFactory;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.TimeByHand;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;
import rinsebell.web.board.TrustTelling;

/** What a device is given that does not trust the server yet. */
class TrustRoutesTest {

    private final TimeByHand time = new TimeByHand(new MachineTime().wall());

    @TempDir
    private Path folder = Path.of("");

    private SecureDoor door;
    private ServerUnderTest server;

    @BeforeEach
    void open() throws Exception {
        door = SecureDoor.byOwnAuthority(folder.resolve("tls"), here(), time);
        server = serving(door);
    }

    private static Whereabouts here() {
        return new Whereabouts(Set.of("colour.test", "bar.local"), InetAddress.getLoopbackAddress());
    }

    private static ServerUnderTest serving(SecureDoor door) {
        Screen screen = new Screen(
                Words.british(),
                Assets.under("/assets"),
                new TimeStyle(ZoneOffset.UTC, false),
                Instant.EPOCH,
                "",
                null);
        return new ServerUnderTest(List.of(new TrustRoutes(
                () -> door.wayIn(8460, 8461),
                door.authority(),
                new TrustTelling(Words.british()),
                view -> new Pages().render(view, screen))));
    }

    @AfterEach
    void close() {
        server.close();
        door.close();
    }

    private Response got(String path) {
        Response answer = given(server.request()).get(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer;
    }

    /** RFC 2585, section 3, for what lies in the file; the type is the one by which browsers know an authority. */
    @Test
    void theCertificateIsTheAuthoritysRoot() throws Exception {
        Response answer = got("/trust/authority.crt");
        assertThat(answer.contentType()).isEqualTo("application/x-x509-ca-cert");
        assertThat(CertificateFactory.getInstance("X.509")
                        .generateCertificate(new ByteArrayInputStream(answer.asByteArray())))
                .isEqualTo(door.authority().orElseThrow().root());
    }

    @Test
    void thePageShowsTheFingerprintOfThatFileAndWhereToGo() throws Exception {
        String hex = HexFormat.of()
                .withUpperCase()
                .formatHex(MessageDigest.getInstance("SHA-256")
                        .digest(got("/trust/authority.crt").asByteArray()));
        String page = got("/trust").asString();
        assertThat(page.replaceAll("</?span>|\\s", "")).contains(hex);
        assertThat(page)
                .contains("localhost", "colour.test", "bar.local")
                .contains("href=\"https://bar.local:8461/\"", "href=\"https://colour.test:8461/\"")
                .contains("http://bar.local:8460/trust")
                .contains("href=\"/trust/authority.crt\"", "href=\"/trust/authority.mobileconfig\"")
                .contains(door.authority().orElseThrow().name());
    }

    /** The keys that every payload has, and "CertificateRoot", as Apple's documentation of device management lists them. */
    @Test
    void anIpadIsGivenTheSameAsAProfile() throws Exception {
        Response answer = got("/trust/authority.mobileconfig");
        assertThat(answer.contentType()).isEqualTo("application/x-apple-aspen-config");
        assertThat(got("/trust/authority.mobileconfig").asByteArray()).isEqualTo(answer.asByteArray());
        Element profile = dictionary(answer.asByteArray());
        assertThat(text(profile, "PayloadType")).isEqualTo("Configuration");
        Element payload = (Element) elements(value(profile, "PayloadContent")).get(0);
        assertThat(text(payload, "PayloadType")).isEqualTo("com.apple.security.root");
        assertThat(Base64.getMimeDecoder().decode(text(payload, "PayloadContent")))
                .isEqualTo(got("/trust/authority.crt").asByteArray());
        for (Element one : List.of(profile, payload)) {
            assertThat(text(one, "PayloadVersion")).isEqualTo("1");
            assertThat(UUID.fromString(text(one, "PayloadUUID")).toString()).isEqualTo(text(one, "PayloadUUID"));
            assertThat(text(one, "PayloadIdentifier")).isNotBlank();
            assertThat(text(one, "PayloadDisplayName"))
                    .isEqualTo(door.authority().orElseThrow().name());
        }
        assertThat(text(profile, "PayloadUUID")).isNotEqualTo(text(payload, "PayloadUUID"));
        assertThat(text(profile, "PayloadIdentifier")).isNotEqualTo(text(payload, "PayloadIdentifier"));
    }

    private static Element dictionary(byte[] written) throws Exception {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setEntityResolver((publicId, systemId) -> new InputSource(new ByteArrayInputStream(new byte[0])));
        Element root = builder.parse(new ByteArrayInputStream(written)).getDocumentElement();
        assertThat(root.getTagName()).isEqualTo("plist");
        return (Element) elements(root).get(0);
    }

    private static List<Node> elements(Node parent) {
        List<Node> all = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element) {
                all.add(child);
            }
        }
        return all;
    }

    /** A dictionary is a row of keys, each with its value behind it. */
    private static Node value(Element dictionary, String key) {
        List<Node> all = elements(dictionary);
        for (int i = 0; i < all.size(); i += 2) {
            if (all.get(i).getTextContent().equals(key)) {
                return all.get(i + 1);
            }
        }
        throw new AssertionError("no " + key);
    }

    private static String text(Element dictionary, String key) {
        return value(dictionary, key).getTextContent().strip();
    }

    @Test
    void whereTheSalonHasItsOwnCertificateThereIsNothingToTrust() throws Exception {
        TestCertificate made = new TestCertificate(folder, "EC", "-1d", 30);
        try (SecureDoor own = SecureDoor.byFiles(made.certificate(), made.key(), here(), time);
                ServerUnderTest other = serving(own)) {
            Response page = given(other.request()).get("/trust");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.asString())
                    .contains("href=\"https://bar.local:8461/\"")
                    .doesNotContain("authority");
            assertThat(Stream.of("/trust/authority.crt", "/trust/authority.mobileconfig")
                            .map(path -> given(other.request()).get(path).statusCode()))
                    .containsOnly(404);
        }
    }
}
