package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RegisteredRoutes;
import rinsebell.floor.salon.Role;

/** What every answer of the running server has in common, whatever was asked for (OWASP ASVS 5.0, V3, V4 and V14). */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryAnswerTest {
    /** As patterns, in the words of the standards themselves: CSP 3, Fetch, Referrer Policy. */
    private static final Map<String, String> HEADERS = Map.of(
            "X-Content-Type-Options",
            "nosniff",
            "Referrer-Policy",
            "same-origin|no-referrer",
            "Cross-Origin-Resource-Policy",
            "same-origin");

    private static final List<String> DIRECTIVES =
            List.of("default-src 'none'", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'");

    private SalonWithStaff house;
    private HttpClient client;
    private Tablet manager;
    private final SortedMap<String, HttpResponse<String>> answers = new TreeMap<>();

    @BeforeAll
    void open(@TempDir Path folder, @TempDir Path other) throws Exception {
        house = new SalonWithStaff(folder);
        client = HttpClient.newBuilder().sslContext(house.trust()).build();
        manager = house.tablet("manager", "desk");
        house.unlock(manager, Role.MANAGER);
        for (var route : RegisteredRoutes.withRoles(other).keySet()) {
            var path = route.substring(route.indexOf(' ') + 1).replaceAll("[{<][a-z]+[}>]", "999");
            if (!route.equals("POST /lock")) {
                answers.put(route, ask(route.substring(0, route.indexOf(' ')), path));
            }
        }
        answers.put("nowhere", ask("GET", "/nowhere"));
        answers.put("nowhere for programs", ask("GET", "/api/nowhere"));
    }

    @AfterAll
    void close() {
        house.close();
    }

    private HttpResponse<String> ask(String method, String path) throws Exception {
        return manager.swiftly(client, method, path, Map.of());
    }

    private void each(BiConsumer<SoftAssertions, Map.Entry<String, HttpResponse<String>>> check) {
        assertThat(answers).hasSizeGreaterThan(150);
        var softly = new SoftAssertions();
        answers.entrySet().forEach(one -> check.accept(softly, one));
        softly.assertAll();
    }

    private static String header(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    /** RFC 9110, section 8.3; what is text says in which letters. */
    @Test
    void everyBodyHasItsType() {
        each((softly, one) -> {
            var type = header(one.getValue(), "Content-Type").toLowerCase(Locale.ROOT);
            if (!one.getValue().body().isEmpty()) {
                softly.assertThat(type)
                        .as(one.getKey())
                        .matches("(text/[a-z-]+; ?charset=utf-8(; header=present)?|image/svg\\+xml.*|font/woff2"
                                + "|application/([a-z-]+\\+)?(json|yaml)(; ?charset=utf-8)?)");
            }
        });
    }

    @Test
    void everyAnswerForbidsWhatAPageDoesNotNeed() {
        each((softly, one) -> {
            HEADERS.forEach((name, value) -> softly.assertThat(header(one.getValue(), name))
                    .as("%s of %s", name, one.getKey())
                    .matches(value));
            softly.assertThat(header(one.getValue(), "Content-Security-Policy").split("; "))
                    .as(one.getKey())
                    .containsAll(DIRECTIVES);
        });
    }

    /** Fetch, section 3.3.3: no other site is ever allowed to read an answer. */
    @Test
    void noOtherSiteMayReadAnything() {
        each((softly, one) -> softly.assertThat(one.getValue().headers().map().keySet())
                .as(one.getKey())
                .noneMatch(name -> name.toLowerCase(Locale.ROOT).startsWith("access-control-")));
    }

    /** RFC 9111, section 5.2.2.5; what devices need to look the same for everybody may be kept. */
    @Test
    void noBrowserKeepsAnAnswerAboutTheSalon() {
        each((softly, one) -> {
            if (!one.getKey().startsWith("GET /assets/") && !one.getKey().equals("GET /worker.js")) {
                softly.assertThat(header(one.getValue(), "Cache-Control"))
                        .as(one.getKey())
                        .isEqualTo("no-store");
            }
        });
    }

    /** RFC 6265bis, sections 4.1.2 and 4.1.3.2. */
    @Test
    void everyCookieIsOurOwnAlone() {
        each((softly, one) -> one.getValue().headers().allValues("Set-Cookie").forEach(cookie -> {
            softly.assertThat(cookie)
                    .as(one.getKey())
                    .startsWith("__Host-")
                    .contains("; Path=/", "; Secure", "; SameSite=Strict");
            softly.assertThat(cookie.contains("; HttpOnly") || cookie.startsWith("__Host-who="))
                    .as("%s: %s", one.getKey(), cookie)
                    .isTrue();
        }));
    }

    /** Whoever has opened something with a PIN finds the way to lock it on the same page. */
    @Test
    void everyPageThatAPinOpenedLeadsToItsLock() throws Exception {
        var opened = answers.values().stream()
                .filter(answer -> answer.statusCode() != 404 && answer.body().contains(" data-private="))
                .toList();
        assertThat(opened)
                .hasSizeGreaterThan(10)
                .allMatch(answer -> answer.body().contains("href=\"/me\""));
        assertThat(ask("GET", "/me").body()).contains("action=\"/lock\"");
    }

    /** RFC 9110, section 9.3.8: it would tell a script what its cookies are. */
    @Test
    void nothingIsTracedBack() throws Exception {
        for (var path : List.of("/", "/api/floor", "/assets/", "/nowhere")) {
            var answer = ask("TRACE", path);
            assertThat(answer.statusCode()).as(path).isIn(404, 405);
            assertThat(answer.body()).doesNotContainIgnoringCase("cookie");
        }
    }

    @Test
    void noFolderIsListed() throws Exception {
        for (var path : List.of("/assets", "/assets/", "/assets/fonts/", "/WEB-INF/", "/META-INF/", "/.git/config")) {
            assertThat(ask("GET", path).statusCode()).as(path).isEqualTo(404);
        }
    }

    /** What a proxy says of itself can take the server's own screen away, and give it to nobody (RFC 7239). */
    @Test
    void noHeaderMakesSomebodyElseOfWhoeverAsks() {
        for (var name : List.of("X-Forwarded-For", "Forwarded", "Via")) {
            assertThat(house.own
                            .request()
                            .header(name, "127.0.0.1")
                            .get("/desk")
                            .statusCode())
                    .as("%s at the server", name)
                    .isEqualTo(403);
            assertThat(Tablet.overHttps(house.salon)
                            .request()
                            .header(name, "for=127.0.0.1;host=localhost")
                            .get("/desk")
                            .statusCode())
                    .as("%s from elsewhere", name)
                    .isEqualTo(403);
        }
    }

    /** W3C Clear Site Data: what a lost device has kept of the salon goes with it. */
    @Test
    void whoeverIsThrownOutKeepsNothing() {
        var lost = house.tablet("lost phone", "pocket");
        assertThat(lost.get("/desk").header("Clear-Site-Data")).isNull();
        var number = Pattern.compile("/devices/(\\d+)/throw-out")
                .matcher(house.own.get("/devices").asString())
                .results()
                .mapToLong(found -> Long.parseLong(found.group(1)))
                .max();
        assertThat(house.own
                        .post("/devices/" + number.getAsLong() + "/throw-out", Map.of())
                        .statusCode())
                .isEqualTo(303);
        var answer = lost.get("/desk");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.header("Clear-Site-Data")).isEqualTo("\"cache\", \"storage\"");
        assertThat(answer.asString()).doesNotContain("Pepperbox");
    }

    /** Whoever does not work here any more opens nothing, with what they had opened before neither. */
    @Test
    void whoeverHasLeftOpensNothing() {
        var tablet = house.tablet("desk's", "desk");
        house.unlock(tablet, Role.DESK);
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(200);
        house.unlock(house.own, Role.MANAGER);
        var left = house.own.program(
                "/api/staff/" + house.staff.get(Role.DESK), Map.of("name", "desk", "role", "desk", "working", "no"));
        assertThat(left.statusCode()).as(left.asString()).isEqualTo(201);
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(403);
        var again = tablet.post(
                "/unlock",
                Map.of("person", String.valueOf(house.staff.get(Role.DESK)), "pin", SalonWithStaff.pin(Role.DESK)));
        assertThat(again.statusCode()).isNotEqualTo(303);
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(403);
    }
}
