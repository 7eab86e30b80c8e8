package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** How a day rang, for programs and for spreadsheets, over real HTTP; each answer is held against its description. */
class LeadReadsTest {
    private final RunningSalon salon;
    private final Program program;

    LeadReadsTest(@TempDir Path folder) {
        salon = new RunningSalon(folder);
        program = new Program(salon);
        program.press("/api/salon", Map.of("name", "Salon", "chairs", 2, "basins", 1, "zone", "Europe/Berlin"));
    }

    @AfterEach
    void end() {
        salon.close();
    }

    @Test
    void nothingIsToldOfADayOnWhichNothingWasDone() {
        program.read("/api/lead")
                .body("people", empty())
                .body("rinses", empty())
                .body("salon.bells", equalTo(0));
        program.ask().queryParam("day", "2999-01-01").get("/api/lead").then().statusCode(404);
        csv("?day=2999-01-01").then().statusCode(404);
    }

    /** Burning rings at once and for everybody; what a device sounded of it is told to the second. */
    @Test
    void whatRangIsToldWithWhatDevicesSounded() {
        long visit = program.press("/api/visits", Map.of("label", "=HYPERLINK(1)", "place", "chair-1"));
        long fact = program.press("/api/visits/" + visit + "/discomfort", Map.of("grade", "burning"));
        String rang = program.read("/api/lead")
                .body("salon.bells", greaterThan(0))
                .body("standing", hasSize(greaterThan(0)))
                .body("sounds", empty())
                .extract()
                .path("standing.find { it.bell.kind == 'burning' }.since");
        long from = java.time.Instant.parse(rang).toEpochMilli();
        given(salon.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon.url())
                .body("sounded=bell-burning-" + visit + "-" + fact + " " + from + " all " + (from + 1500) + " "
                        + (from - 5))
                .post("/sounded")
                .then()
                .statusCode(204);
        org.awaitility.Awaitility.await()
                .untilAsserted(() -> program.read("/api/lead")
                        .body("sounds", hasSize(1))
                        .body("sounds[0].late", equalTo(1.5f))
                        .body("sounds[0].ear", equalTo("all")));
    }

    @Test
    void theSameIsATableFile() {
        long visit = program.press("/api/visits", Map.of("label", "M. A.", "place", "chair-1"));
        program.press("/api/visits/" + visit + "/discomfort", Map.of("grade", "burning"));
        var answer = csv("");
        answer.then()
                .statusCode(200)
                .header("Content-Type", startsWith("text/csv"))
                .header("Content-Disposition", startsWith("attachment; filename=\"rinsebell-20"));
        List<String> lines = answer.asString().lines().toList();
        assertThat(lines.get(0)).isEqualTo("day,table,number,row,column,value");
        assertThat(lines).anyMatch(line -> line.endsWith(",Bells in all,This day,1"));
    }

    private io.restassured.response.Response csv(String query) {
        return program.ask().get("/api/lead.csv" + query);
    }
}
