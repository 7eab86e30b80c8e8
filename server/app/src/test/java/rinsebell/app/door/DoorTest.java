package rinsebell.app.door;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.http.RawHttp;
import rinsebell.app.http.ServerUnderTest;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DoorTest {

    private static final String FORM = "application/x-www-form-urlencoded";

    private @Nullable ServerUnderTest server;

    @BeforeAll
    void open() {
        server = new ServerUnderTest(List.of(routes -> {
            routes.get("/", ctx -> ctx.html("<p>here</p>"));
            routes.post("/press", ctx -> ctx.result("" + Bodies.of(ctx).length));
            routes.post("/api/press", ctx -> ctx.result("" + Bodies.of(ctx).length));
            routes.get("/api/bug", ctx -> {
                throw new IllegalStateException("secret words");
            });
            routes.get("/bug", ctx -> {
                throw new StackOverflowError("secret words");
            });
            routes.get("/api/odd", ctx -> {
                throw new Problem(
                                ProblemCode.FIELDS,
                                List.of(new FieldProblem("日本", "unknown", "There is no such field.")))
                        .thrown();
            });
            routes.get("/busy", ctx -> {
                throw Problem.of(ProblemCode.REPORTS_BUSY).thrown();
            });
            routes.get("/api/fields", ctx -> {
                throw new Problem(
                                ProblemCode.FIELDS,
                                List.of(new FieldProblem("grams", "too-small", "Grams must be above 0.")))
                        .thrown();
            });
        }));
    }

    @AfterAll
    void close() {
        server().close();
    }

    @Test
    void everyAnswerCarriesTheSecureHeaders() {
        assertSecure(ask().get("/"), 200);
        assertSecure(ask().get("/nowhere"), 404);
        assertSecure(ask().get("/api/nowhere"), 404);
        assertSecure(ask().get("/api/bug"), 500);
        assertSecure(ask().get("/bug"), 500);
        assertSecure(ask().get("/press"), 405);
        assertSecure(ask().get("/busy"), 503);
        assertSecure(ask().header("Host", "example.org").get("/"), 421);
        assertSecure(ask().header("Sec-WebSocket-Version", "13").get("/"), 200);
        assertSecure(ask().head("/"), 200);
    }

    /** RFC 9110, section 10.2.3: after how many seconds it is worth asking again. */
    @Test
    void whoeverFindsTheHouseBusyIsToldWhenToComeAgain() {
        assertThat(Integer.parseInt(ask().get("/busy").header("Retry-After"))).isBetween(1, 60);
        assertThat(ask().get("/bug").header("Retry-After")).isNull();
    }

    private static void assertSecure(Response answer, int status) {
        assertThat(answer.statusCode()).isEqualTo(status);
        SecureHeaders.ALL.forEach((name, value) ->
                assertThat(answer.headers().getValues(name)).as(name).containsExactly(value));
        // What is kept on a device goes by this name, so it may never be another.
        assertThat(answer.header("Rinsebell-Answer")).isEqualTo("true");
        assertThat(answer.header("Server")).isNull();
    }

    /** Broken requests never reach a route; the words and the headers must be there all the same. */
    @ParameterizedTest
    @CsvSource({
        "'GARBAGE', 400",
        "'GET / HTTP/1.1\r\nHost: localhost\r\nHost: localhost', 400",
        "'GET /%zz HTTP/1.1\r\nHost: localhost:PORT', 400",
        "'GET /a%2fb HTTP/1.1\r\nHost: localhost:PORT', 400",
        "'GET /assets/..%2f..%2fetc/passwd HTTP/1.1\r\nHost: localhost:PORT', 400",
        "'GET /assets/../../etc/passwd HTTP/1.1\r\nHost: localhost:PORT', 400",
        "'GET / HTTP/1.1', 400",
        "'GET / HTTP/1.0', 421",
        "'GET / HTTP/9.9\r\nHost: localhost:PORT', 400",
        "'GET http://example.org/ HTTP/1.1\r\nHost: example.org', 421",
        "'GET http://example.org/ HTTP/1.1\r\nHost: localhost:PORT', 400",
        "'FLY / HTTP/1.1\r\nHost: localhost:PORT\r\nConnection: close\r\nIdempotency-Key: aaaaaaaa', 405",
        "'POST /press HTTP/1.1\r\nHost: localhost:PORT\r\nContent-Length: -5', 400",
        "'POST /press HTTP/1.1\r\nHost: localhost:PORT\r\nContent-Length: 5\r\nTransfer-Encoding: chunked', 400"
    })
    void brokenRequestsAreAnsweredInPlainWords(String request, int status) throws Exception {
        String answer = raw(request.replace("PORT", "" + server().port()) + "\r\n\r\n");
        assertThat(RawHttp.status(answer)).isEqualTo(status);
        assertThat(RawHttp.headers(answer))
                .contains("content-security-policy: default-src 'none'; ", "nosniff", "rinsebell-answer: true");
        assertThat(answer).contains("<h1>").doesNotContainIgnoringCase("jetty", "exception", "\tat ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1%2F2", "%00", "..%2F1", "%C0%AF", "%zz", "1%5C2", "%2e%2e"})
    void anAddressThatHidesAnotherIsRefused(String piece) throws Exception {
        String answer = raw("GET /api/" + piece + "/press HTTP/1.1\r\nHost: localhost:" + server().port()
                + "\r\nConnection: close\r\n\r\n");
        assertThat(RawHttp.status(answer)).isIn(400, 404);
        assertThat(RawHttp.headers(answer)).contains("content-security-policy: default-src 'none'; ");
        assertThat(answer).doesNotContainIgnoringCase("jetty", "exception", "\tat ");
    }

    @Test
    void noHeaderTurnsOneMethodIntoAnother() {
        press("/press")
                .header("X-HTTP-Method-Override", "GET")
                .post("/press")
                .then()
                .statusCode(200);
        press("/press")
                .header("X-HTTP-Method-Override", "GET")
                .header("Origin", "http://example.org")
                .post("/press")
                .then()
                .statusCode(403);
        ask().header("X-HTTP-Method-Override", "POST").get("/press").then().statusCode(405);
    }

    @Test
    void addressesAndHeadersHaveAnEnd() throws Exception {
        String host = "Host: localhost:" + server().port() + "\r\n";
        assertThat(RawHttp.status(raw("GET /" + "a".repeat(9_000) + " HTTP/1.1\r\n" + host + "\r\n")))
                .isEqualTo(414);
        assertThat(RawHttp.status(raw("GET / HTTP/1.1\r\n" + host + "X: " + "a".repeat(9_000) + "\r\n\r\n")))
                .isEqualTo(431);
        assertThat(RawHttp.status(raw("GET / HTTP/1.1\r\n" + host + "X: a\r\n".repeat(2_000) + "\r\n")))
                .isEqualTo(431);
    }

    @ParameterizedTest
    @CsvSource({"0, 200", "65535, 200", "65536, 200", "65537, 413", "1048576, 413"})
    void bodiesHaveAnEnd(int bytes, int status) {
        for (String path : List.of("/press", "/api/press")) {
            Response answer = press(path).body("a".repeat(bytes)).post(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(status);
        }
    }

    @Test
    void aChunkedBodyHasTheSameEnd() throws Exception {
        String chunk = "8000\r\n" + "a".repeat(0x8000) + "\r\n";
        String head = "POST /press HTTP/1.1\r\nHost: localhost:" + server().port()
                + "\r\nContent-Type: " + FORM
                + "\r\nIdempotency-Key: aaaaaaaa\r\nConnection: close\r\nTransfer-Encoding: chunked\r\n\r\n";
        assertThat(RawHttp.status(raw(head + chunk.repeat(2) + "0\r\n\r\n"))).isEqualTo(200);
        assertThat(RawHttp.status(raw(head + chunk.repeat(32) + "0\r\n\r\n"))).isEqualTo(413);
    }

    /** Somebody walks out of reach of the network, or a program counts wrongly: no bug of ours. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Content-Length: 10\r\n\r\na=1",
                "Transfer-Encoding: chunked\r\n\r\nzz\r\na=1",
                "Transfer-Encoding: chunked\r\n\r\n5\r\na=1",
                "Transfer-Encoding: chunked\r\n\r\n3\r\na=1\r\n-1\r\n",
                "Transfer-Encoding: chunked\r\n\r\n3\r\na=1"
            })
    void aBodyThatBreaksOffIsNotTaken(String rest) throws Exception {
        String answer = raw("POST /press HTTP/1.1\r\nHost: localhost:" + server().port() + "\r\nContent-Type: " + FORM
                + "\r\nIdempotency-Key: aaaaaaaa\r\n" + rest);
        assertThat(RawHttp.status(answer)).isIn(400, 408);
        assertThat(RawHttp.headers(answer)).contains("content-security-policy");
    }

    /** Ten bytes a second would keep a thread for hours. */
    @Test
    void aBodyThatDripsIsCutOff() throws Exception {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server().port())) {
            String head = "POST /press HTTP/1.1\r\nHost: localhost:" + server().port() + "\r\nContent-Type: " + FORM
                    + "\r\nIdempotency-Key: aaaaaaaa\r\nContent-Length: 60000\r\n\r\n";
            socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
            await().atMost(Duration.ofSeconds(10)).until(() -> {
                socket.getOutputStream().write('a');
                return socket.getInputStream().available() > 0;
            });
            byte[] answer = new byte[64];
            int read = socket.getInputStream().read(answer);
            assertThat(new String(answer, 0, read, StandardCharsets.US_ASCII)).startsWith("HTTP/1.1 408 ");
        }
    }

    @Test
    void tooLargeIsSaidInPlainWords() {
        press("/api/press")
                .body("a".repeat(1_048_576))
                .post("/api/press")
                .then()
                .statusCode(413)
                .body("detail", containsString("64 kilobytes"));
    }

    @ParameterizedTest
    @CsvSource({
        "/press, application/x-www-form-urlencoded, 200",
        "/press, Application/X-WWW-Form-Urlencoded; charset=UTF-8, 200",
        "/press, application/json, 415",
        "/press, multipart/form-data; boundary=x, 415",
        "/press, text/plain, 415",
        "/press, application/x-www-form-urlencoded; charset=utf-16, 415",
        "/press, nonsense, 415",
        "/api/press, application/json, 200",
        "/api/press, application/json;charset=utf-8, 200",
        "/api/press, application/x-www-form-urlencoded, 415",
        "/api/press, text/plain, 415",
        "/api/press, application/json; charset=utf-16, 415"
    })
    void onlyKnownContentIsRead(String path, String type, int status) throws Exception {
        String answer = raw("POST " + path + " HTTP/1.1\r\nHost: localhost:" + server().port() + "\r\nContent-Type: "
                + type + "\r\nIdempotency-Key: aaaaaaaa\r\nConnection: close\r\nContent-Length: 2\r\n\r\n{}");
        assertThat(RawHttp.status(answer)).isEqualTo(status);
    }

    @Test
    void aBodyWithoutATypeIsNotRead() throws Exception {
        String answer = raw("POST /press HTTP/1.1\r\nHost: localhost:" + server().port()
                + "\r\nIdempotency-Key: aaaaaaaa\r\nConnection: close\r\nContent-Length: 2\r\n\r\n{}");
        assertThat(RawHttp.status(answer)).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://example.org", "null", "https://localhost", "http://127.0.0.1"})
    void aPressFromAnotherSiteChangesNothing(String origin) {
        press("/press").header("Origin", origin).post("/press").then().statusCode(403);
        press("/api/press").header("Origin", origin).post("/api/press").then().statusCode(403);
    }

    @Test
    void everyWritingMethodIsHeldToTheOrigin() {
        RequestSpecification foreign = ask().header("Origin", "http://example.org");
        assertThat(foreign.put("/press").statusCode()).isEqualTo(403);
        assertThat(foreign.delete("/press").statusCode()).isEqualTo(403);
        assertThat(foreign.patch("/press").statusCode()).isEqualTo(403);
    }

    /** A link may lead here; a script of another site may not even look, nor sit in the feed. */
    @Test
    void anotherSitesScriptReadsNothing() {
        ask().header("Origin", "http://example.org").get("/").then().statusCode(403);
        ask().header("Origin", "null").get("/").then().statusCode(403);
        ask().header("Origin", server().url("")).get("/").then().statusCode(200);
        ask().header("Sec-Fetch-Site", "cross-site")
                .header("Sec-Fetch-Mode", "navigate")
                .get("/")
                .then()
                .statusCode(200);
        for (String mode : List.of("no-cors", "cors", "websocket")) {
            ask().header("Sec-Fetch-Site", "cross-site")
                    .header("Sec-Fetch-Mode", mode)
                    .get("/")
                    .then()
                    .statusCode(403);
        }
    }

    /** Whoever asks for another protocol is answered like anybody else, and leaves nothing behind: RFC 6455, section 1.3. */
    @Test
    void noOtherProtocolIsSpoken() {
        RequestSpecification upgrade = ask().header("Connection", "Upgrade")
                .header("Upgrade", "websocket")
                .header("Sec-WebSocket-Version", "13")
                .header("Sec-WebSocket-Key", "dGhlIHNhbXBsZSBub25jZQ==");
        upgrade.get("/").then().statusCode(200).header("Set-Cookie", nullValue());
        upgrade.header("Host", "example.org").get("/").then().statusCode(421).header("Set-Cookie", nullValue());
    }

    /** More senders than the server has threads. */
    @Test
    void manySlowBodiesKeepNobodyElseWaiting() throws Exception {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 300; i++) {
                slow.add(withoutItsEnd());
            }
            press("/press").body("by=1").post("/press").then().statusCode(200);
            ask().get("/").then().statusCode(200).time(lessThan(4_000L));
        } finally {
            for (Socket one : slow) {
                one.close();
            }
        }
    }

    /** The few bytes of a press that come in two packets are a press. */
    @Test
    void aBodyInTwoPartsIsTaken() throws Exception {
        try (Socket socket = withoutItsEnd()) {
            ask().get("/").then().statusCode(200);
            socket.getOutputStream().write("b".getBytes(StandardCharsets.US_ASCII));
            byte[] answer = new byte[64];
            int read = socket.getInputStream().read(answer);
            assertThat(new String(answer, 0, read, StandardCharsets.US_ASCII)).startsWith("HTTP/1.1 200 ");
        }
    }

    private Socket withoutItsEnd() throws Exception {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server().port());
        String head = "POST /press HTTP/1.1\r\nHost: localhost:" + server().port() + "\r\nContent-Type: " + FORM
                + "\r\nIdempotency-Key: aaaaaaaa\r\nContent-Length: 2\r\n\r\na";
        socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    @Test
    void anUnknownMethodIsUnknown() throws Exception {
        String answer = raw("BREW /press HTTP/1.1\r\nHost: localhost:" + server().port() + "\r\n\r\n");
        assertThat(RawHttp.status(answer)).isEqualTo(405);
    }

    /** Problem details are JSON, and JSON is UTF-8 (RFC 8259, section 8.1). */
    @Test
    void whatIsWrongIsSaidInUtf8() {
        byte[] answer = ask().get("/api/odd").asByteArray();
        assertThat(new String(answer, StandardCharsets.UTF_8)).contains("日本");
    }

    @Test
    void noPreflightIsGranted() {
        Response answer = ask().header("Origin", "http://example.org")
                .header("Access-Control-Request-Method", "POST")
                .header("Access-Control-Request-Headers", "idempotency-key")
                .options("/api/press");
        assertThat(answer.headers().asList())
                .noneMatch(header -> header.getName().startsWith("Access-Control-"));
    }

    @Test
    void programsGetProblemDetails() {
        ask().get("/api/nowhere")
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("type", equalTo("urn:rinsebell:problem:not-found"))
                .body("title", equalTo("There is nothing at this address"))
                .body("status", equalTo(404))
                .body("code", equalTo("not-found"))
                .body("errors", nullValue());
        ask().get("/api/fields")
                .then()
                .statusCode(422)
                .body("errors[0].field", equalTo("grams"))
                .body("errors[0].code", equalTo("too-small"))
                .body("errors[0].detail", equalTo("Grams must be above 0."));
    }

    @Test
    void peopleGetAPage() {
        ask().accept("application/json")
                .get("/nowhere")
                .then()
                .contentType("text/html")
                .body(containsString("There is nothing at this address"))
                .body(containsString("href=\"/\""));
    }

    @Test
    void aBugShowsNothingOfItsInside() {
        for (String path : List.of("/bug", "/api/bug")) {
            ask().get(path)
                    .then()
                    .statusCode(500)
                    .body(not(containsString("secret")))
                    .body(not(containsString("Exception")))
                    .body(not(containsString("rinsebell.app")))
                    .body(containsString("went wrong"));
        }
    }

    @Test
    void aWrongMethodNamesTheRightOne() {
        ask().get("/api/press").then().statusCode(405).header("Allow", containsString("POST"));
    }

    private String raw(String request) throws Exception {
        return RawHttp.ask(server().port(), request);
    }

    private RequestSpecification ask() {
        return given(server().request()).redirects().follow(false);
    }

    private RequestSpecification press(String path) {
        String type = ProblemText.forPrograms(path) ? "application/json" : FORM;
        return ask().header("Idempotency-Key", "aaaaaaaa").header("Content-Type", type);
    }

    private ServerUnderTest server() {
        return Objects.requireNonNull(server);
    }
}
