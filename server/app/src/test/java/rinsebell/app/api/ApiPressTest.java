package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.response.ValidatableResponse;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** Presses and reads that a plain day has no place for. One salon; each test has a chair of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ApiPressTest {

    private @Nullable RunningSalon opened;

    @BeforeAll
    void open(@TempDir Path folder) {
        opened = new RunningSalon(folder);
        anEmptySalonCanBeRead();
        press("/api/salon", ApiDayTest.house());
    }

    @AfterAll
    void close() {
        salon().close();
    }

    private void anEmptySalonCanBeRead() {
        for (String path : List.of("floor", "bells", "salon", "visits", "bowls", "products", "log")) {
            program().read("/api/" + path);
        }
    }

    /** Read as JSON and as YAML it is one description: the parser takes both and finds the same. */
    @Test
    void theDescriptionIsServedInBothFormats() {
        assertThat(described("yaml", "application/yaml")).isEqualTo(described("json", "application/json"));
    }

    private OpenAPI described(String format, String type) {
        String text = given(salon().request())
                .get("/api/openapi." + format)
                .then()
                .statusCode(200)
                .contentType(startsWith(type))
                .extract()
                .asString();
        assertThat(text.startsWith("{")).isEqualTo(format.equals("json"));
        SwaggerParseResult result = new OpenAPIV3Parser().readContents(text);
        assertThat(result.getMessages()).isEmpty();
        return result.getOpenAPI();
    }

    @Test
    void directionsThatWereReadCanBeSentBack() {
        for (Map<String, Object> directions : List.of(Shelf.powder(), Shelf.cream(), Shelf.developer())) {
            long id = press("/api/products", directions);
            Map<String, Object> before =
                    program().read("/api/products/" + id).extract().path("directions");
            press("/api/products/" + id + "/directions", before);
            program().read("/api/products/" + id).body("edition", equalTo(2)).body("directions", equalTo(before));
        }
    }

    @Test
    void thePolicyThatWasReadCanBeSentBack() {
        Map<String, Object> before = program().read("/api/policy").extract().path("$");
        press("/api/policy", before);
        program().read("/api/policy").body("$", equalTo(before));
        press("/api/policy", Map.of("applying", 33));
        program().read("/api/policy").body("applying", equalTo(33));
    }

    @Test
    void aRestrictionIsRefusedAsAPlanAndRecordedAsAFact() {
        long visit = press("/api/visits", Map.of("label", "R. T.", "place", "chair-2"));
        press(
                "/api/visits/" + visit + "/gate",
                Map.of("skinTest", "none", "scalp", "fine", "earlierReaction", "no", "metal", "none", "under16", "no"));
        long bowl = press("/api/bowls", Map.of("portions", portions()));
        Map<String, Object> onScalp = Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp");
        program()
                .send("/api/visits/" + visit + "/put-on", onScalp)
                .statusCode(409)
                .contentType("application/problem+json")
                .body("canBeFact", equalTo(true))
                .body("reasons.code", hasItem("OFF_SCALP_PRODUCT"))
                .body("reasons[0].basis", equalTo("DIRECTIONS"));
        Map<String, Object> done = new HashMap<>(onScalp);
        done.put("intent", "fact");
        press("/api/visits/" + visit + "/put-on", done);
        program().read("/api/bells").body("kind", hasItem("forbidden-zone"));
    }

    @Test
    void everyOtherPressOfADay() {
        long staff = press("/api/staff", Map.of("name", "Ines", "role", "stylist"));
        press("/api/staff/" + staff, Map.of("name", "Ines", "role", "manager", "working", true));
        long visit = press("/api/visits", Map.of("label", "J. W.", "place", "bench", "stylist", staff));
        String head = "/api/visits/" + visit;
        press(head + "/move", Map.of("place", "chair-3", "by", staff));
        press(head + "/hand-over", Map.of("helper", staff));
        press(head + "/label", Map.of("label", "J. W. (2)"));
        press(head + "/client", Map.of());
        long on = press(head + "/already-on", Map.of("minutesAgo", 0));
        program().read(head).body("applications", hasSize(1));
        press(head + "/cover", Map.of("cover", "film", "intent", "fact"));
        press(head + "/plan", Map.of("planned", 20));
        press(head + "/heat-on", Map.of("heat", "gentle-steam", "intent", "fact"));
        press(head + "/heat-off", Map.of());
        press(head + "/foils-out", Map.of());
        press(head + "/emulsified", Map.of());
        press(head + "/scalp", Map.of("finding", "pink", "decision", "rinse"));
        long wiped = press(head + "/wipe-off", Map.of());
        press("/api/facts/" + wiped + "/withdraw", Map.of());
        press(head + "/rinse", Map.of());
        press(head + "/stop", Map.of());
        press("/api/bowls/" + on + "/throw-away", Map.of());
        program().read("/api/bowls/" + on).body("thrownAwayAt", notNullValue());
    }

    @Test
    void whatWasLeftIsToldWithThePressAndAfterwards() {
        long powder = press("/api/products", Shelf.powder());
        long bowl = press(
                "/api/bowls", Map.of("intent", "fact", "portions", List.of(Map.of("product", powder, "grams", 60))));
        String at = "/api/bowls/" + bowl;
        program()
                .send(at + "/throw-away", Map.of("left", "half", "grams", 30))
                .statusCode(422)
                .body("errors.field", equalTo(List.of("grams")));
        program()
                .send(at + "/throw-away", Map.of("grams", 60.01))
                .statusCode(422)
                .body("errors.field", equalTo(List.of("grams")));
        press(at + "/throw-away", Map.of());
        program().read(at).body("left", nullValue()).body("leftGrams", nullValue());
        program().send(at + "/throw-away", Map.of()).statusCode(409);
        press(at + "/throw-away", Map.of("left", "three-quarters"));
        program().read(at).body("left", equalTo("three-quarters"));
        press(at + "/throw-away", Map.of("grams", 12.5));
        program().read(at).body("left", nullValue()).body("leftGrams", equalTo(12.5f));
    }

    @Test
    void aTubHasAPrice() {
        long powder = press("/api/products", Shelf.powder());
        program().read("/api/products/" + powder).body("tub", nullValue());
        program()
                .send("/api/products/" + powder + "/price", Map.of("tubGrams", 450, "price", 27.555))
                .statusCode(422)
                .body("errors.field", equalTo(List.of("price")));
        press("/api/products/" + powder + "/price", Map.of("tubGrams", 450, "price", 27.5));
        program()
                .read("/api/products/" + powder)
                .body("tub.grams", equalTo(450))
                .body("tub.price", equalTo(27.5f));
    }

    @Test
    void breaksAndBasins() {
        long staff = press("/api/staff", Map.of("name", "Per"));
        press("/api/day/break", Map.of("staff", staff));
        program().read("/api/floor").body("onBreak", hasItem((int) staff));
        press("/api/day/back", Map.of("staff", staff));
        press("/api/day/basin-closed", Map.of("basin", "B"));
        program().read("/api/floor").body("basins[1].closed", equalTo(true));
        press("/api/day/basin-opened", Map.of("basin", "basin-B"));
        program().read("/api/floor").body("basins[1].closed", equalTo(false));
        press("/api/day/caught-up", Map.of());
        program()
                .ask()
                .header("Idempotency-Key", Program.freshId())
                .post("/api/day/clock")
                .then()
                .statusCode(409)
                .body("code", equalTo("clock-agrees"));
    }

    @Test
    void bowlsAreFilledAndDivided() {
        long bowl = press("/api/bowls", Map.of("portions", portions()));
        long part = press("/api/bowls/" + bowl + "/divide", Map.of("reason", "next-area"));
        press("/api/bowls/" + bowl + "/recipe", Map.of("portions", portions()));
        program()
                .read("/api/bowls/" + part)
                .body("dividedFrom", equalTo((int) bowl))
                .body("portions", hasSize(2));
    }

    @Test
    void whatIsNotOfferedStaysOnTheShelf() {
        long powder = press("/api/products", Shelf.powder());
        press("/api/products/" + powder + "/offer", Map.of("offered", false));
        program().read("/api/products/" + powder).body("offered", equalTo(false));
    }

    @Test
    void aPressCountsOnceEvenAcrossARestart() {
        String id = Program.freshId();
        Map<String, Object> welcome = Map.of("label", "D. K.", "place", "chair-5");
        int visit = program()
                .send("/api/visits", welcome, id)
                .statusCode(201)
                .extract()
                .path("facts[0]");
        Map<String, Object> taken = Map.of("label", "L. S.", "place", "chair-5");
        String refused = Program.freshId();
        String first = program()
                .send("/api/visits", taken, refused)
                .statusCode(409)
                .extract()
                .asString();
        salon().stop();
        salon().start();
        program().send("/api/visits", welcome, id).statusCode(201).body("facts[0]", equalTo(visit));
        program()
                .send("/api/visits", Map.of("label", "X", "place", "bench"), id)
                .statusCode(422)
                .body("code", equalTo("press-id-reused"));
        assertThat(program()
                        .send("/api/visits", taken, refused)
                        .statusCode(409)
                        .extract()
                        .asString())
                .isEqualTo(first);
        program().read("/api/visits").body("findAll { it.place == 'chair-5' }.label", equalTo(List.of("D. K.")));
    }

    /** A program that did not hear the answer sends the same press again: by then it may not even be readable. */
    @Test
    void aPressThatWasTakenIsAnsweredTheSameThoughItsOwnDoingMakesItWrong() {
        long visit = press("/api/visits", Map.of("label", "T. U.", "place", "chair-7"));
        press("/api/visits/" + visit + "/already-on", Map.of());
        String id = Program.freshId();
        String first = rinse(visit, id).statusCode(201).extract().asString();
        assertThat(rinse(visit, id).statusCode(201).extract().asString()).isEqualTo(first);
        rinse(visit, Program.freshId()).statusCode(409).body("reasons.code", hasItem("NOT_ON"));
        program()
                .send("/api/visits/" + visit + "/rinse", Map.of("basin", "A"), id)
                .statusCode(422)
                .body("code", equalTo("press-id-reused"));
    }

    private ValidatableResponse rinse(long visit, String id) {
        return program().send("/api/visits/" + visit + "/rinse", Map.of(), id);
    }

    private List<Map<String, Object>> portions() {
        long powder = press("/api/products", Shelf.powder());
        long developer = press("/api/products", Shelf.developer());
        return List.of(Map.of("product", powder, "grams", 30), Map.of("product", developer, "grams", 30.5));
    }

    private long press(String path, Map<String, ?> body) {
        return program().press(path, body);
    }

    private Program program() {
        return new Program(salon());
    }

    private RunningSalon salon() {
        return Objects.requireNonNull(opened);
    }
}
