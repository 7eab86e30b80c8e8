package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;

import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** A salon's day over real HTTP on a real disk, every call held against the API's own description. */
class ApiDayTest {

    private static final OpenApiValidationFilter DESCRIBED =
            new OpenApiValidationFilter("rinsebell/app/openapi.yaml");

    @TempDir
    private Path folder = Path.of("");

    private @Nullable RunningSalon opened;

    private RunningSalon salon() {
        if (opened == null) {
            opened = new RunningSalon(folder);
        }
        return opened;
    }

    @AfterEach
    void close() {
        salon().close();
    }

    @Test
    void anEmptySalonCanBeRead() {
        for (String path : List.of("floor", "bells", "salon", "visits", "bowls", "products", "log")) {
            read("/api/" + path).statusCode(200);
        }
        read("/api/salon").body("setUp", equalTo(false));
    }

    @Test
    void aHeadFromWelcomeToLeaving() {
        setUp();
        long powder = product(lightener());
        long developer = product(developer());
        long visit = press("/api/visits", Map.of("label", "M. A.", "place", "chair-1"));
        press(
                "/api/visits/" + visit + "/gate",
                Map.of("skinTest", "none", "scalp", "fine", "earlierReaction", "no", "metal", "none", "under16", "no"));
        long bowl = press(
                "/api/bowls",
                Map.of(
                        "visit",
                        visit,
                        "portions",
                        List.of(
                                Map.of("product", powder, "grams", 60),
                                Map.of("product", developer, "grams", 60.5))));
        long application = press(
                "/api/visits/" + visit + "/put-on",
                Map.of("bowl", bowl, "area", "foils-all", "zone", "off-scalp", "cover", "foil"));
        read("/api/visits/" + visit)
                .body("applications", hasSize(1))
                .body("applications[0].id", equalTo((int) application))
                .body("rinseBy.hard", equalTo(true))
                .body("rinseBy.why", equalTo("usable-end"))
                .body("nextStrandCheck", notNullValue());
        read("/api/bells").body("kind", hasItem("rinse"));
        press("/api/visits/" + visit + "/last-on", Map.of());
        press("/api/visits/" + visit + "/strand", Map.of("level", 8, "tone", "yellow", "decision", "5"));
        press("/api/visits/" + visit + "/foils-out", Map.of());
        press("/api/visits/" + visit + "/rinse", Map.of("basin", "A"));
        press("/api/visits/" + visit + "/towel-dried", Map.of());
        press("/api/visits/" + visit + "/lift", Map.of("reached", true));
        read("/api/floor")
                .body("visits[0].place", equalTo("basin-A"))
                .body("visits[0].applications[0].ended.how", equalTo("rinsed"))
                .body("visits[0].round.liftReached", equalTo(true));
        press("/api/visits/" + visit + "/leave", Map.of());
        read("/api/visits/" + visit).body("leftAt", notNullValue());
        read("/api/log?visit=" + visit).body("kind", hasItem("strand-checked"));
    }

    @Test
    void directionsThatWereReadCanBeSentBack() {
        setUp();
        for (Map<String, Object> directions : List.of(lightener(), developer())) {
            long id = product(directions);
            Map<String, Object> before = read("/api/products/" + id).extract().path("directions");
            press("/api/products/" + id + "/directions", before);
            read("/api/products/" + id).body("edition", equalTo(2)).body("directions", equalTo(before));
        }
    }

    @Test
    void thePolicyThatWasReadCanBeSentBack() {
        setUp();
        Map<String, Object> before = read("/api/salon").extract().path("policy");
        press("/api/policy", before);
        read("/api/salon").body("policy", equalTo(before));
        press("/api/policy", Map.of("applying", 33));
        read("/api/salon").body("policy.applying", equalTo(33));
    }

    @Test
    void aRestrictionIsRefusedAsAPlanAndRecordedAsAFact() {
        setUp();
        long powder = product(lightener());
        long developer = product(developer());
        long visit = press("/api/visits", Map.of("label", "R. T.", "place", "chair-2"));
        press(
                "/api/visits/" + visit + "/gate",
                Map.of("skinTest", "none", "scalp", "fine", "earlierReaction", "no", "metal", "none", "under16", "no"));
        long bowl = press(
                "/api/bowls",
                Map.of("portions", List.of(Map.of("product", powder, "grams", 60), Map.of("product", developer, "grams", 60))));
        Map<String, Object> onScalp = Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp");
        send("/api/visits/" + visit + "/put-on", onScalp, id())
                .statusCode(409)
                .contentType("application/problem+json")
                .body("canBeFact", equalTo(true))
                .body("reasons.code", hasItem("OFF_SCALP_PRODUCT"))
                .body("reasons[0].basis", equalTo("DIRECTIONS"));
        Map<String, Object> done = new HashMap<>(onScalp);
        done.put("intent", "fact");
        press("/api/visits/" + visit + "/put-on", done);
        read("/api/bells").body("kind", hasItem("forbidden-zone"));
    }

    @Test
    void everyOtherPressOfADay() {
        setUp();
        long staff = press("/api/staff", Map.of("name", "Ines", "role", "stylist"));
        press("/api/staff/" + staff, Map.of("name", "Ines", "role", "manager", "working", true));
        long visit = press("/api/visits", Map.of("label", "J. W.", "place", "bench", "stylist", staff));
        press("/api/visits/" + visit + "/move", Map.of("place", "chair-3", "by", staff));
        press("/api/visits/" + visit + "/hand-over", Map.of("helper", staff));
        press("/api/visits/" + visit + "/label", Map.of("label", "J. W. (2)"));
        long on = press("/api/visits/" + visit + "/already-on", Map.of("minutesAgo", 5));
        read("/api/visits/" + visit).body("applications", hasSize(1));
        press("/api/visits/" + visit + "/cover", Map.of("cover", "film", "intent", "fact"));
        press("/api/visits/" + visit + "/plan", Map.of("planned", 20));
        press("/api/visits/" + visit + "/heat-on", Map.of("heat", "gentle-steam", "intent", "fact"));
        press("/api/visits/" + visit + "/heat-off", Map.of());
        press("/api/visits/" + visit + "/emulsified", Map.of());
        press("/api/visits/" + visit + "/discomfort", Map.of("grade", "tingling"));
        press("/api/visits/" + visit + "/scalp", Map.of("finding", "pink", "decision", "rinse"));
        long wiped = press("/api/visits/" + visit + "/wipe-off", Map.of());
        press("/api/facts/" + wiped + "/set-back", Map.of("earlier", 1));
        press("/api/facts/" + wiped + "/withdraw", Map.of());
        press("/api/visits/" + visit + "/rinse", Map.of());
        press("/api/visits/" + visit + "/stop", Map.of());
        press("/api/bowls/" + on + "/throw-away", Map.of());
        press("/api/day/break", Map.of("staff", staff));
        press("/api/day/back", Map.of("staff", staff));
        press("/api/day/basin-closed", Map.of("basin", "B"));
        read("/api/floor").body("basins[1].closed", equalTo(true));
        press("/api/day/basin-opened", Map.of("basin", "B"));
        press("/api/day/caught-up", Map.of());
        send("/api/day/clock", Map.of(), id()).statusCode(409).body("code", equalTo("clock-agrees"));
    }

    @Test
    void bowlsAreFilledAndDivided() {
        setUp();
        long powder = product(lightener());
        long developer = product(developer());
        press("/api/products/" + powder + "/offer", Map.of("offered", true));
        Map<String, Object> recipe = Map.of(
                "portions", List.of(Map.of("product", powder, "grams", 30), Map.of("product", developer, "grams", 30)));
        long bowl = press("/api/bowls", recipe);
        long part = press("/api/bowls/" + bowl + "/divide", Map.of("reason", "next-area"));
        press("/api/bowls/" + bowl + "/recipe", recipe);
        read("/api/bowls/" + part).body("dividedFrom", equalTo((int) bowl)).body("portions", hasSize(2));
    }

    @Test
    void burningRingsAndIsAcknowledged() {
        setUp();
        long visit = press("/api/visits", Map.of("label", "A. V.", "place", "chair-4"));
        long burning = press("/api/visits/" + visit + "/discomfort", Map.of("grade", "burning"));
        read("/api/bells").body("find { it.kind == 'burning' }.stage.priority", equalTo("high"));
        press("/api/bells/acknowledge", Map.of("kind", "burning", "subject", visit, "anchor", burning));
        read("/api/bells").body("find { it.kind == 'burning' }.seen", equalTo(true));
    }

    @Test
    void aPressCountsOnceEvenAcrossARestart() {
        setUp();
        String id = id();
        Map<String, Object> welcome = Map.of("label", "D. K.", "place", "chair-5");
        int visit = send("/api/visits", welcome, id).statusCode(201).extract().path("facts[0]");
        send("/api/visits", welcome, id).statusCode(201).body("facts[0]", equalTo(visit));
        salon().stop();
        salon().start();
        send("/api/visits", welcome, id).statusCode(201).body("facts[0]", equalTo(visit));
        send("/api/visits", Map.of("label", "X", "place", "bench"), id)
                .statusCode(422)
                .body("code", equalTo("press-id-reused"));
        read("/api/visits").body("", hasSize(1)).body("[0].label", equalTo("D. K."));
    }

    @Test
    void aRefusalIsTheSameAcrossARestart() {
        setUp();
        String id = id();
        Map<String, Object> taken = Map.of("label", "L. S.", "place", "chair-6");
        press("/api/visits", taken);
        String first = send("/api/visits", taken, id).statusCode(409).extract().asString();
        salon().stop();
        salon().start();
        assertThat(send("/api/visits", taken, id).statusCode(409).extract().asString()).isEqualTo(first);
    }

    private void setUp() {
        press("/api/salon", Map.of("name", "Harbour Lane", "chairs", 8, "basins", 2, "bench", 4, "zone", "Europe/Berlin"));
    }

    private long product(Map<String, Object> directions) {
        return press("/api/products", directions);
    }

    /** Common practice, no source: powder that stays active for an hour, an equal weight of developer, off scalp. */
    private static Map<String, Object> lightener() {
        Map<String, Object> json = new HashMap<>(Map.of(
                "name", "Powder lightener", "kind", "powder-lightener", "zone", "off-scalp", "dye", false, "usableFor", 60));
        json.put("atEnd", "rinse");
        json.put("covers", Map.of("foil", Map.of("allowed", true, "upTo", 50)));
        json.put("heats", Map.of("gentle-steam", Map.of("allowed", true, "upTo", 10)));
        json.put("mixtures", List.of(Map.of("name", "equal parts", "developerPer60", 60, "extraPer60", 7)));
        json.put("strengths", List.of(6, 9, 12));
        json.put("pairings", Map.of("permanent-colour", Map.of("rule", "never")));
        json.put("checks", Map.of("strandEvery", 10, "strandEveryHeated", 5));
        json.put("develops", Map.of("from", 20, "to", 50, "counted", "from-mixing"));
        return json;
    }

    private static Map<String, Object> developer() {
        return Map.of("name", "Developer 20 vol", "kind", "developer", "zone", "on-scalp", "dye", false, "peroxide", 6);
    }

    /** Sends a press that must be taken, and answers the number of its first fact. */
    private long press(String path, Map<String, Object> body) {
        Number first = send(path, body, id()).statusCode(201).extract().path("facts[0]");
        return first.longValue();
    }

    private ValidatableResponse send(String path, Map<String, Object> body, String pressId) {
        return ask().header("Idempotency-Key", pressId).body(body).post(path).then();
    }

    private ValidatableResponse read(String path) {
        return ask().get(path).then().statusCode(200);
    }

    private RequestSpecification ask() {
        return given(salon().request()).filter(DESCRIBED);
    }

    private static String id() {
        return UUID.randomUUID().toString();
    }
}
