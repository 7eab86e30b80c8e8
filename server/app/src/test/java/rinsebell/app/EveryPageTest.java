package rinsebell.app;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.db.FolderInUse;
import rinsebell.web.form.FormPages;

/** Every page of the house: opened, opened wrongly, and with names in it that would be more than names. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPageTest {

    /** As long as a label may be: a tag, an end of an attribute, an emoji of several characters, Hebrew. */
    private static final String NAME = "<b onload=x>\"'&amp;👩‍🦰 שלום";

    private static final Pattern INLINE = Pattern.compile(
            "<script(?![^>]*\\ssrc=)|\\son[a-z]+=\"|\\sstyle=\"|<style|javascript:", Pattern.CASE_INSENSITIVE);

    /** Addresses that people do not open. */
    private static final Pattern NO_PAGE =
            Pattern.compile("/(api|assets|feed|clock|worker[.]js|look/\\{key}/chairs[.]ics|join/\\{code})(/|$)");

    private final Map<String, Long> ids = new TreeMap<>();
    private static final Pattern KEY = Pattern.compile("/look/([A-Za-z0-9_-]{24})\"");

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private @Nullable RunningSalon opened;
    private String key = "";
    private Set<String> routes = Set.of();

    @BeforeAll
    void open(@TempDir Path folder, @TempDir Path other) throws IOException, FolderInUse {
        routes = RegisteredRoutes.in(other);
        opened = new RunningSalon(folder);
        made("/api/salon", Map.of("name", NAME, "chairs", 3, "basins", 2, "bench", 2, "zone", "Europe/Berlin"));
        ids.put("staff", made("/api/staff", Map.of("name", NAME)));
        ids.put("pins", id("staff"));
        made("/api/shelf", Map.of());
        ids.put(
                "products",
                made(
                        "/api/products",
                        Map.of("name", NAME, "kind", "permanent-colour", "zone", "on-scalp", "dye", true)));
        ids.put("clients", made("/api/clients", Map.of("label", NAME)));
        ids.put(
                "visits",
                made(
                        "/api/visits",
                        Map.of("label", NAME, "place", "chair-1", "stylist", id("staff"), "client", id("clients"))));
        ids.put(
                "bowls",
                made(
                        "/api/bowls",
                        Map.of(
                                "visit",
                                id("visits"),
                                "intent",
                                "fact",
                                "portions",
                                List.of(Map.of("product", id("products"), "grams", 30)))));
        ids.put(
                "recipes",
                made(
                        "/api/recipes",
                        Map.of(
                                "name",
                                NAME,
                                "client",
                                id("clients"),
                                "portions",
                                List.of(Map.of("product", id("products"), "grams", 30)))));
        made(
                "/api/visits/" + id("visits") + "/put-on",
                Map.of("bowl", id("bowls"), "area", "lengths", "zone", "off-scalp", "intent", "fact"));
        ids.put("facts", made("/api/visits/" + id("visits") + "/discomfort", Map.of("grade", "burning", "note", NAME)));
        made("/api/clients/" + id("clients") + "/note", Map.of("kind", "reaction"));
        key = key();
    }

    @AfterAll
    void close() {
        salon().close();
    }

    private long made(String path, Map<String, ?> body) {
        Response answer = given(salon().request())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(body)
                .post(path);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isIn(201, 204);
        if (answer.statusCode() == 204) {
            return 0;
        }
        List<Number> facts = answer.path("facts");
        Number number = facts == null ? answer.path("client") : facts.isEmpty() ? 0 : facts.get(facts.size() - 1);
        return number.longValue();
    }

    /** Of a link that looks in, which is shown once. */
    private String key() {
        var page = given(salon().request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon().url())
                .body("name=" + encoded(NAME))
                .post("/look-ins")
                .asString();
        return KEY.matcher(page)
                .results()
                .map(found -> found.group(1))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aKeyIsTakenAtTwoAddressesAndOnlyReads() {
        assertThat(routes)
                .filteredOn(route -> route.contains("{key}"))
                .containsExactly("GET /look/{key}", "GET /look/{key}/chairs.ics");
    }

    @Test
    void everyPageOpensAndHoldsNamesAsNames() {
        Set<String> named = new TreeSet<>();
        List<String> pages = pages(routes).toList();
        assertThat(pages).hasSizeGreaterThan(50);
        for (String page : pages) {
            HttpResponse<String> answer = open(page);
            assertThat(answer.statusCode()).as("%s: %s", page, answer.body()).isEqualTo(200);
            assertIsPage(page, answer);
            if (answer.body().contains("&lt;b onload=x")) {
                named.add(page);
            }
        }
        assertThat(named)
                .contains(
                        "/",
                        "/bells",
                        "/desk",
                        "/look-ins",
                        "/staff",
                        "/products",
                        "/clients",
                        "/visits/" + id("visits"));
    }

    @Test
    void whateverStandsBehindTheQuestionMarkIsOnlyText() {
        List<String> pages = pages(routes).toList();
        List<String> queries = List.of(
                "done=" + id("facts"),
                "done=x",
                "done=999999999999999999",
                "staff=x",
                "place=" + encoded(NAME),
                "label=" + encoded(NAME),
                "bowl=" + encoded("<script>alert(1)</script>"),
                "x=" + "y".repeat(3_000),
                "a=1&a=2",
                "minutesAgo=%00");
        // Every page has a third of them, its neighbours the others: together they say as much in a third of the time.
        for (int page = 0; page < pages.size(); page++) {
            for (int query = page % 3; query < queries.size(); query += 3) {
                assertOnlyText(pages.get(page) + "?" + queries.get(query));
            }
        }
    }

    private void assertOnlyText(String address) {
        HttpResponse<String> answer = open(address);
        assertThat(answer.statusCode()).as("%s: %s", address, answer.body()).isIn(200, 400);
        assertIsPage(address, answer);
    }

    @Test
    void whatIsNotThereIsSaidInPlainWords() {
        for (String route : routes) {
            if (!route.startsWith("GET /") || route.contains("/api/") || !route.contains("{")) {
                continue;
            }
            for (String bad : List.of("x", "-1", "999999999999999999", "9".repeat(30), "%D9%A3", "%20", "%3Cb%3E")) {
                String page = route.substring(4).replaceAll("\\{[a-z]+}", bad);
                HttpResponse<String> answer = open(page);
                assertThat(answer.statusCode())
                        .as("%s: %s", page, answer.body())
                        .isEqualTo(404);
                assertIsPage(page, answer);
            }
        }
    }

    @Test
    void noPageListensToAnotherMethod() {
        for (String page : pages(routes).toList()) {
            HttpResponse<String> head = asked("HEAD", page);
            assertThat(head.statusCode()).as(page).isEqualTo(200);
            assertThat(head.body()).isEmpty();
            HttpResponse<String> options = asked("OPTIONS", page);
            assertThat(options.statusCode()).as(page).isIn(200, 204, 404, 405);
            assertThat(options.headers().allValues("Access-Control-Allow-Origin"))
                    .isEmpty();
            assertThat(asked("PUT", page, "Idempotency-Key", "12345678").statusCode())
                    .as(page)
                    .isEqualTo(405);
        }
    }

    private static void assertIsPage(String page, HttpResponse<String> answer) {
        String html = answer.body();
        assertThat(header(answer, "Content-Type")).as(page).startsWith("text/html");
        assertThat(header(answer, "Content-Security-Policy")).as(page).startsWith("default-src 'none'; ");
        assertThat(html)
                .as(page)
                .doesNotContain("<b onload", "<script>alert", "\"'&amp;👩")
                .startsWith("<!doctype html>");
        assertThat(INLINE.matcher(html).results().map(found -> found.group()))
                .as(page)
                .isEmpty();
    }

    /** The address of every page, with the numbers of what is on this floor. */
    private Stream<String> pages(Set<String> routes) {
        return routes.stream()
                .filter(route -> route.startsWith("GET /"))
                .map(route -> route.substring(4))
                .filter(path -> !NO_PAGE.matcher(path).lookingAt())
                .filter(path -> !path.equals("/chairs/{chair}"))
                .flatMap(this::filled);
    }

    private Stream<String> filled(String path) {
        String resource = path.split("/").length > 1 ? path.split("/")[1] : "";
        String about = path.replaceAll("\\{(id|visit)}", String.valueOf(ids.get(resource)))
                .replace("{key}", key);
        return about.contains("{press}")
                ? FormPages.all().names().stream()
                        .filter(name -> name.resource().equals(resource) && !isReachedOtherwise(name.press()))
                        .map(name -> about.replace("{press}", name.press()))
                : Stream.of(about);
    }

    private static boolean isReachedOtherwise(String press) {
        return Set.of("", "list", "change", "card").contains(press);
    }

    private HttpResponse<String> open(String page) {
        return asked("GET", page);
    }

    /** By a client that costs little: some thousand pages are opened. */
    private HttpResponse<String> asked(String method, String page, String... headers) {
        var request = HttpRequest.newBuilder(URI.create(salon().url() + page)).method(method, BodyPublishers.noBody());
        if (headers.length > 0) {
            request.headers(headers);
        }
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(page, e);
        }
    }

    private static String header(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private long id(String resource) {
        return Objects.requireNonNull(ids.get(resource));
    }

    private RunningSalon salon() {
        return Objects.requireNonNull(opened);
    }
}
