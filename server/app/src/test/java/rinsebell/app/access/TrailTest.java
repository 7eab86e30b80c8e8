package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.salon.Role;

/** Who, which device, what and when: for each press, and for each look at what is about people. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TrailTest {

    private SalonWithStaff house;
    private long client;
    private Tablet desk;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        house = new SalonWithStaff(folder);
        var answer = house.own.program("/api/clients", Map.of("label", "=cmd|' /C calc'!A0"));
        client = answer.<Number>path("client").longValue();
        desk = house.tablet("tablet at the desk", "desk");
        house.unlock(desk, Role.DESK);
    }

    @AfterAll
    void close() {
        house.close();
    }

    private List<Map<String, Object>> steps() {
        return house.own.get("/api/trail").path("steps");
    }

    private Map<String, Object> last(String route) {
        return steps().stream()
                .filter(step -> route.equals(step.get("route")))
                .reduce((one, next) -> next)
                .orElseThrow(() -> new AssertionError(route + " is not among " + steps()));
    }

    private int person(Role role) {
        return Objects.requireNonNull(house.staff.get(role)).intValue();
    }

    @Test
    void aLookAtARecord() {
        assertThat(desk.get("/clients/" + client).statusCode()).isEqualTo(200);
        assertThat(last("GET /clients/{id}"))
                .containsEntry("by", person(Role.DESK))
                .containsEntry("matter", "history")
                .containsEntry("subject", (int) client)
                .containsEntry("status", 200)
                .hasEntrySatisfying(
                        "device", device -> assertThat((String) device).matches("device-\\d+"))
                .hasEntrySatisfying("at", at -> assertThat((String) at).endsWith("Z"));
        assertThat(house.own.get("/trail").asString()).contains("Looked at: Records of clients", "tablet at the desk");
    }

    @Test
    void byWhateverWay() {
        desk.get("/api/clients/" + client);
        assertThat(last("GET /api/clients/{id}")).containsEntry("subject", (int) client);
        assertThat(desk.post("/clients/find", Map.of("letters", "calc")).asString())
                .contains("cmd|");
        assertThat(last("POST /clients/find")).doesNotContainKey("subject");
        desk.get("/welcome?client=" + client);
        assertThat(last("GET /welcome")).containsEntry("subject", (int) client).containsEntry("matter", "history");
        var visit = house.program("/api/visits", Map.of("label", "Ada", "place", "chair-1"));
        desk.get("/visits/" + visit + "/client");
        assertThat(last("GET /visits/{id}/{press}"))
                .containsEntry("matter", "finding")
                .containsEntry("subject", (int) visit);
        var found = desk.post("/visits/" + visit + "/client/find", Map.of("letters", "calc"));
        assertThat(found.asString()).contains("cmd|");
        assertThat(last("POST /visits/{id}/client/find")).containsEntry("matter", "finding");
        house.own.get("/api/trail.csv");
        assertThat(last("GET /api/trail.csv")).containsEntry("by", person(Role.MANAGER));
    }

    @Test
    void whatIsNotThereIsNoLook() {
        var before = steps().stream()
                .filter(step -> "GET /clients/{id}".equals(step.get("route")))
                .count();
        assertThat(desk.get("/clients/4711").statusCode()).isEqualTo(404);
        assertThat(steps().stream().filter(step -> "GET /clients/{id}".equals(step.get("route"))))
                .hasSize((int) before);
    }

    /** OWASP ASVS 5.0, 16.3.1 and 16.3.2. */
    @Test
    void pinsAndWhatWasRefused() {
        var tablet = house.tablet("tablet at chair 1", "chair-1");
        assertThat(last("POST /join")).containsKey("subject").containsEntry("status", 303);
        var wrong =
                Map.of("person", String.valueOf(house.staff.get(Role.ASSISTANT)), "pin", "000111", "page", "/clients");
        assertThat(tablet.post("/unlock", wrong).statusCode()).isEqualTo(403);
        assertThat(last("POST /unlock"))
                .containsEntry("subject", person(Role.ASSISTANT))
                .containsEntry("status", 403);
        house.unlock(tablet, Role.ASSISTANT);
        assertThat(last("POST /unlock")).containsEntry("status", 303);
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(403);
        assertThat(last("GET /clients"))
                .containsEntry("by", person(Role.ASSISTANT))
                .containsEntry("status", 403);
        assertThat(house.own.get("/trail").asString())
                .contains("PIN wrong", "PIN right", "Was refused: Records of clients", "Did: Devices and links");
    }

    @Test
    void aPressWithItsDevice() {
        var tablet = house.tablet("tablet at chair 4", "chair-4");
        assertThat(tablet.program("/api/visits", Map.of("label", "+Cy", "place", "chair-4"))
                        .statusCode())
                .isEqualTo(201);
        List<Map<String, Object>> facts = house.own.get("/api/trail").path("facts");
        var arrived = facts.get(facts.size() - 1);
        assertThat(arrived)
                .hasEntrySatisfying(
                        "device", device -> assertThat((String) device).startsWith("device-"));
        assertThat(arrived)
                .hasEntrySatisfying("fact", fact -> assertThat(fact.toString()).contains("kind=arrived", "text=+Cy"));
        assertThat(arrived.get("press")).isNotEqualTo("");
    }

    /** Read by Apache Commons CSV as RFC 4180; cells that could begin a formula as OWASP's "CSV Injection" asks. */
    @Test
    void aTableForASpreadsheet() throws Exception {
        house.program("/api/visits", Map.of("label", "=2+5", "place", "bench", "stylist", person(Role.STYLIST)));
        var table = house.own.get("/api/trail.csv");
        assertThat(table.header("Content-Disposition")).contains("rinsebell-trail-");
        var records = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new java.io.StringReader(table.asString()))
                .getRecords();
        assertThat(records)
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.size()).isEqualTo(10));
        assertThat(records).anySatisfy(one -> assertThat(one.get("what")).startsWith("'=2+5: "));
        assertThat(records).extracting(one -> one.get("recorded")).isSorted();
        assertThat(table.asString()).doesNotContain("cmd|");
    }

    @Test
    void onlyAManagerReadsIt() {
        assertThat(desk.get("/trail").statusCode()).isEqualTo(403);
        assertThat(desk.get("/api/trail").statusCode()).isEqualTo(403);
    }
}
