package rinsebell.app.lookin;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import rinsebell.app.RunningSalon;
import rinsebell.app.door.Key;

/** Links that look in, over HTTP: what a key opens, and that nothing else does. */
class LookRoutesTest {
    private static final String NOBODY = "A".repeat(24);
    private static final Pattern KEY = Pattern.compile("/look/([A-Za-z0-9_-]{24})\"");
    private static final Pattern BACK = Pattern.compile("/look-ins/(\\d+)/take-back");

    @TempDir
    private Path folder = Path.of("");

    private @Nullable RunningSalon opened;

    @BeforeEach
    void open() {
        opened = new RunningSalon(folder);
        press("/api/salon", Map.of("name", "Pepperbox Yard", "chairs", 3, "basins", 1, "bench", 2, "zone", "Etc/UTC"));
        press("/api/staff", Map.of("name", "Odile"));
        var visit = press("/api/visits", Map.of("label", "M. A.", "place", "chair-1"));
        press("/api/visits/" + visit + "/services", Map.of("services", List.of("cut")));
        press("/api/visits", Map.of("label", "R. T.", "place", "bench"));
    }

    @AfterEach
    void close() {
        salon().close();
    }

    private RunningSalon salon() {
        return Objects.requireNonNull(opened);
    }

    private long press(String path, Map<String, ?> body) {
        Response answer = given(salon().request())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(body)
                .post(path);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isEqualTo(201);
        return answer.<List<Number>>path("facts").get(0).longValue();
    }

    private Response get(String path) {
        return given(salon().request()).get(path);
    }

    private Response send(String path, String form) {
        return given(salon().request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon().url())
                .redirects()
                .follow(false)
                .body(form)
                .post(path);
    }

    private Response makes(String name) {
        return send("/look-ins", "name=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
    }

    private static String keyIn(Response page) {
        var key = KEY.matcher(page.asString());
        assertThat(key.find()).as(page.asString()).isTrue();
        return key.group(1);
    }

    private void takesBackAll() {
        BACK.matcher(get("/look-ins").asString())
                .results()
                .forEach(found ->
                        assertThat(send(found.group(), "").statusCode()).isEqualTo(303));
    }

    @Test
    void aLinkShowsWhenChairsAreFreeAndNothingOfAnybody() {
        var page = get("/look/" + keyIn(makes("Ada’s phone")));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.contentType()).startsWith("text/html");
        assertThat(page.header("Cache-Control")).isEqualTo("no-store");
        assertThat(page.header("Referrer-Policy")).isEqualTo("no-referrer");
        assertThat(page.header("Content-Security-Policy")).startsWith("default-src 'none'; ");
        assertThat(page.header("Set-Cookie")).isNull();
        assertThat(page.asString())
                .contains("Chairs at Pepperbox Yard", "almost surely by", "free now", "One waits on the bench.")
                .doesNotContain("M. A.", "R. T.", "Odile", "/visits", "<a ", "<form", "<button", "<input", "press");
    }

    @Test
    void itsCalendarIsReadByAnotherLibrary() {
        var calendar = get("/look/" + keyIn(makes("calendar")) + "/chairs.ics");
        assertThat(calendar.statusCode()).isEqualTo(200);
        assertThat(calendar.contentType().replace(" ", "").toLowerCase(java.util.Locale.ROOT))
                .isEqualTo("text/calendar;charset=utf-8");
        assertThat(calendar.header("Referrer-Policy")).isEqualTo("no-referrer");
        assertThat(Biweekly.parse(calendar.asString()).first().getEvents()).hasSize(1);
        assertThat(calendar.asString()).doesNotContain("M. A.", "R. T.", "Odile");
    }

    /** RFC 9110, sections 13.1.2 and 15.4.5: no content, and the headers that the whole answer would have had. */
    @Test
    void whoHasTheCalendarAlreadyIsNotSentIt() {
        // Nobody leaves a chair that is free: it stays the same whatever the minute.
        press("/api/salon", Map.of("name", "Elsewhere", "chairs", 1, "basins", 1, "bench", 2, "zone", "Etc/UTC"));
        var address = "/look/" + keyIn(makes("calendar")) + "/chairs.ics";
        var first = get(address);
        var tag = first.header("ETag");
        assertThat(tag).matches("\"[0-9a-f]{32}\"");
        for (var held : List.of(tag, "W/" + tag, "\"x\", " + tag, "*")) {
            var again = given(salon().request()).header("If-None-Match", held).get(address);
            assertThat(again.statusCode()).as(held).isEqualTo(304);
            assertThat(again.header("ETag")).isEqualTo(tag);
            assertThat(again.header("Cache-Control")).isEqualTo("private, no-cache");
            assertThat(again.asString()).isEmpty();
        }
        press("/api/salon", Map.of("name", "Elsewhere else", "chairs", 1, "basins", 1, "bench", 2, "zone", "Etc/UTC"));
        var changed = given(salon().request()).header("If-None-Match", tag).get(address);
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(changed.header("ETag")).isNotEqualTo(tag);
    }

    @Test
    void whatWasTakenBackIsAnsweredAsWhatNeverWas() {
        var key = keyIn(makes("Ada’s phone"));
        var other = keyIn(makes("other"));
        assertThat(get("/look/" + key).statusCode()).isEqualTo(200);
        assertThat(get("/look-ins").asString()).contains("last opened");
        takesBackAll();
        for (var path : List.of("", "/chairs.ics")) {
            var gone = get("/look/" + key + path);
            assertThat(gone.statusCode()).isEqualTo(404);
            assertThat(gone.asString())
                    .isEqualTo(get("/look/" + NOBODY + path).asString())
                    .contains("This link is not open")
                    .doesNotContain("Pepperbox", "hair 1", "<a ", "as of");
            assertThat(gone.header("Cache-Control")).isEqualTo("no-store");
            assertThat(get("/look/" + other + path).statusCode()).isEqualTo(404);
        }
        assertThat(get("/look-ins").asString()).contains("No link is out.").doesNotContain("take-back");
    }

    @Test
    void anOddKeyOpensNothing() {
        for (var key : List.of(
                "x",
                "-1",
                NOBODY.substring(1),
                NOBODY + "A",
                NOBODY.substring(1) + "%00",
                NOBODY.substring(1) + "+",
                NOBODY.substring(1) + "%2F",
                "%D9%A3%D9%A3%D9%A3",
                "%F0%9F%92%87",
                "'%20or%201=1--",
                "%3Cb%3E",
                "%25",
                "chairs.ics")) {
            for (var path : List.of("/look/" + key, "/look/" + key + "/chairs.ics")) {
                var answer = get(path);
                assertThat(answer.statusCode()).as(path).isIn(400, 404);
                assertThat(answer.contentType()).startsWith("text/html");
                assertThat(answer.asString()).doesNotContain("Pepperbox", "hair 1");
            }
        }
        assertThat(get("/look/" + NOBODY.repeat(700)).statusCode()).isIn(404, 414, 431);
    }

    @Test
    void aKeyOnlyReads() {
        var page = "/look/" + keyIn(makes("Ada’s phone"));
        for (var path : List.of(page, page + "/chairs.ics")) {
            var head = given(salon().request()).head(path);
            assertThat(head.statusCode()).isEqualTo(200);
            assertThat(head.asString()).isEmpty();
            assertThat(send(path, "name=x").statusCode()).as("POST %s", path).isEqualTo(405);
            assertThat(send(path, "name=x").header("Allow")).contains("GET").doesNotContain("POST");
            for (var method : List.of("PUT", "DELETE", "PATCH")) {
                var answer = given(salon().request())
                        .header("Idempotency-Key", "12345678")
                        .request(method, path);
                assertThat(answer.statusCode()).as("%s %s", method, path).isEqualTo(405);
            }
        }
        assertThat(get(page).statusCode()).isEqualTo(200);
    }

    @Test
    void aNameIsAskedForAndMustBeOne() {
        for (var name : List.of("", "  ", "x".repeat(1_000), "x".repeat(41), "a\u0000b", "a\nb", "\u202eabc")) {
            var answer = makes(name);
            assertThat(answer.statusCode()).as(name).isEqualTo(422);
            assertThat(answer.asString()).contains("aria-invalid=\"true\"").doesNotContain("/look/");
        }
        assertThat(makes("x".repeat(41)).asString())
                .contains("value=\"" + "x".repeat(41) + "\"", "At most 40 characters");
        assertThat(send("/look-ins", "").statusCode()).isEqualTo(422);
        assertThat(send("/look-ins", "%").statusCode()).isEqualTo(400);
        assertThat(get("/look-ins").asString()).contains("No link is out.");
        assertThat(makes("x".repeat(40)).statusCode()).isEqualTo(200);
        var tags = makes("<b onload=x>\"'&amp;").asString();
        assertThat(tags).contains("&lt;b onload=x&gt;").doesNotContain("<b onload");
    }

    @Test
    void aHundredLinksAreTooMany() {
        var made = IntStream.range(0, 100).mapToObj(i -> makes("phone " + i)).toList();
        assertThat(made).filteredOn(answer -> answer.statusCode() == 200).hasSize(LookInRoutes.MOST);
        assertThat(made.get(99).statusCode()).isEqualTo(409);
        assertThat(made.get(99).asString()).contains("20 links are out already").doesNotContain("/look/");
        takesBackAll();
        assertThat(makes("again").statusCode()).isEqualTo(200);
    }

    /** A page that was sent and is loaded again asks for the same once more. */
    @Test
    void theSamePressShowsNoKeyTwice() {
        assertThat(keyIn(send("/look-ins", "name=phone&press=0123456789abcdef")))
                .isNotEmpty();
        var again = send("/look-ins", "name=phone&press=0123456789abcdef");
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.asString()).contains("shown only once").doesNotContain("/look/");
        assertThat(BACK.matcher(again.asString()).results()).hasSize(1);
    }

    @Test
    void takingBackIsAPressAndMeantForALink() {
        makes("Ada’s phone");
        assertThat(get("/look-ins/1/take-back").statusCode()).isEqualTo(405);
        assertThat(send("/look-ins/x/take-back", "").statusCode()).isEqualTo(404);
        assertThat(send("/look-ins/999999999999/take-back", "").statusCode()).isEqualTo(303);
        var foreign = given(salon().request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", "http://elsewhere.test")
                .post("/look-ins/1/take-back");
        assertThat(foreign.statusCode()).isEqualTo(403);
        assertThat(BACK.matcher(get("/look-ins").asString()).results()).hasSize(1);
    }

    /** The hash is looked for as well, so that what finds nothing is seen to find something. */
    @Test
    void theKeyIsOnNoDiskAndItOutlastsARestart() throws IOException {
        var key = keyIn(makes("Ada’s phone"));
        var hash = Key.read(key).orElseThrow().hash();
        salon().stop();
        try (var files = Files.walk(folder)) {
            var written = files.filter(Files::isRegularFile)
                    .map(LookRoutesTest::letters)
                    .toList();
            assertThat(written).noneMatch(text -> text.contains(key)).anyMatch(text -> text.contains(hash));
        }
        salon().start();
        assertThat(get("/look/" + key).statusCode()).isEqualTo(200);
    }

    private static String letters(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void noLogTellsTheKey() {
        var heard = new ListAppender<ILoggingEvent>();
        heard.start();
        var ours = (Logger) LoggerFactory.getLogger("rinsebell");
        var level = ours.getLevel();
        ours.setLevel(Level.ALL);
        ours.addAppender(heard);
        try {
            var key = keyIn(makes("Ada’s phone"));
            get("/look/" + key);
            get("/look/" + key + "/chairs.ics");
            send("/look/" + key, "");
            takesBackAll();
            get("/look/" + key);
            assertThat(heard.list)
                    .extracting(ILoggingEvent::getFormattedMessage)
                    .anyMatch(said -> said.startsWith("GET /look/{key} 200"))
                    .anyMatch(said -> said.startsWith("GET /look/{key} 404"))
                    .noneMatch(said -> said.contains(key));
        } finally {
            ours.detachAppender(heard);
            ours.setLevel(level);
        }
    }

    @Test
    void anAddressThatOnlyThisMachineHasIsSaidToBeOne() {
        assertThat(makes("Ada’s phone").asString()).contains("leads nowhere but on this machine");
    }
}
