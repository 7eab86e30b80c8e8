package rinsebell.app.api;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.restassured.response.ValidatableResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.RunningSalon;

/** Instants that can't be: still to come, before the bowl was mixed, before anybody came, or no instants at all. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadTimesTest {

    private @Nullable RunningSalon salon;
    private long visit;
    private long bowl;

    @BeforeAll
    void open(@TempDir Path folder) {
        salon = new RunningSalon(folder);
        program().press("/api/salon", ApiDayTest.house());
        visit = program().press("/api/visits", Map.of("label", "M. A.", "place", "chair-1", "minutesAgo", 60));
        program().press("/api/visits/" + visit + "/gate", Map.of("scalp", "fine", "minutesAgo", 60));
        long developer = program().press("/api/products", Shelf.developer());
        bowl = program()
                .press(
                        "/api/bowls",
                        Map.of("portions", List.of(Map.of("product", developer, "grams", 5)), "minutesAgo", 20));
    }

    @AfterAll
    void close() {
        Objects.requireNonNull(salon).close();
    }

    @Test
    void nothingHasHappenedThatIsStillToCome() {
        for (int seconds : List.of(60, 3_600, 86_400 * 365)) {
            String at = now().plusSeconds(seconds).toString();
            scalp(Map.of("finding", "fine", "at", at)).statusCode(409).body("code", equalTo("IN_THE_FUTURE"));
            welcome(Map.of("at", at)).statusCode(409).body("code", equalTo("IN_THE_FUTURE"));
        }
        long look = Program.taken(scalp(Map.of("finding", "fine")));
        program()
                .send("/api/facts/" + look + "/set-back", Map.of("earlier", -5))
                .statusCode(409)
                .body("code", equalTo("IN_THE_FUTURE"));
    }

    @Test
    void nothingIsDoneToSomebodyWhoHasNotCome() {
        scalp(Map.of("finding", "fine", "minutesAgo", 59)).statusCode(201);
        scalp(Map.of("finding", "fine", "minutesAgo", 61)).statusCode(409).body("code", equalTo("TOO_EARLY"));
        String before = now().minus(61, ChronoUnit.MINUTES).toString();
        scalp(Map.of("finding", "fine", "at", before)).statusCode(409).body("code", equalTo("TOO_EARLY"));
    }

    @Test
    void nothingIsPutOnBeforeItIsMixed() {
        putOn(21).statusCode(409).body("reasons.code", hasItem("TOO_EARLY"));
        long on = Program.taken(putOn(19));
        program()
                .send("/api/facts/" + on + "/set-back", Map.of("earlier", 2))
                .statusCode(409)
                .body("code", equalTo("TOO_EARLY"));
        program().press("/api/facts/" + on + "/set-back", Map.of("earlier", -2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yesterday",
                "24:00",
                "12:60",
                "1:5",
                "14.05",
                "2026-02-30T10:00:00Z",
                "2026-05-14T10:00:00",
                "2026-05-14",
                "2026-05-14T10:00:00+25:00",
                "2016-12-31T23:59:60Z",
                "1999-12-31T23:59:59Z",
                "9999-12-31T23:59:59Z",
                "+999999999-12-31T23:59:59Z",
                "1747216800",
                "NaN"
            })
    void whatIsNoTimeIsSaid(String at) {
        scalp(Map.of("finding", "fine", "at", at))
                .statusCode(422)
                .body("errors.field", equalTo(List.of("at")))
                .body("errors.code", equalTo(List.of("not-a-time")));
    }

    @ParameterizedTest
    @CsvSource({
        "721, too-large",
        "-1, too-small",
        "0.5, not-whole",
        "1e3, not-a-number",
        "99999999999999999999, not-a-number"
    })
    void howLongAgoHasAnEnd(String ago, String code) {
        Map<String, Object> body = Map.of("finding", "fine", "minutesAgo", ago);
        program()
                .askAnyhow()
                .header("Idempotency-Key", Program.freshId())
                .body(body)
                .post("/api/visits/" + visit + "/scalp")
                .then()
                .statusCode(422)
                .body("errors.field", equalTo(List.of("minutesAgo")))
                .body("errors.code", equalTo(List.of(code)));
    }

    @Test
    void aTimeIsSaidOnce() {
        scalp(Map.of("finding", "fine", "at", "12:00", "minutesAgo", 5))
                .statusCode(422)
                .body("errors.code", equalTo(List.of("two-answers")));
    }

    private ValidatableResponse scalp(Map<String, ?> body) {
        return program().send("/api/visits/" + visit + "/scalp", body);
    }

    private ValidatableResponse putOn(int minutesAgo) {
        return program()
                .send(
                        "/api/visits/" + visit + "/put-on",
                        Map.of(
                                "bowl", bowl,
                                "area", "lengths",
                                "zone", "off-scalp",
                                "minutesAgo", minutesAgo,
                                "intent", "fact"));
    }

    private ValidatableResponse welcome(Map<String, String> when) {
        return program()
                .send(
                        "/api/visits",
                        Map.of("label", "B. C.", "place", "bench", "at", Objects.requireNonNull(when.get("at"))));
    }

    private Instant now() {
        return Instant.parse(program().read("/api/floor").extract().path("now"));
    }

    private Program program() {
        return new Program(Objects.requireNonNull(salon));
    }
}
