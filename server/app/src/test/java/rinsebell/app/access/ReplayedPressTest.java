package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.salon.Role;

/** A press is its device's: whoever learns its id can neither ask what it was answered nor take its place. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReplayedPressTest {
    private SalonWithStaff house;
    private Tablet hers;
    private Tablet thiefs;
    private long visit;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        house = new SalonWithStaff(folder);
        hers = house.tablet("hers", "chair-1");
        thiefs = house.tablet("stolen", "chair-2");
        visit = house.program(
                "/api/visits", Map.of("label", "Ines", "place", "chair-1", "stylist", house.staff.get(Role.STYLIST)));
    }

    @AfterAll
    void close() {
        house.close();
    }

    private static String fresh() {
        return UUID.randomUUID().toString();
    }

    private Response note(Tablet tablet, String id, String note) {
        return tablet.request()
                .header("Idempotency-Key", id)
                .contentType("application/json")
                .body(Map.of("grade", "tingling", "note", note))
                .post("/api/visits/" + visit + "/discomfort");
    }

    @Test
    void theSamePressFromItsOwnDeviceCountsOnce() {
        var id = fresh();
        List<Integer> first = note(hers, id, "left").path("facts");
        assertThat(note(hers, id, "left").<List<Integer>>path("facts")).isEqualTo(first);
        assertThat(note(hers, id, "right").statusCode()).isEqualTo(422);
    }

    @Test
    void fromAnotherDeviceItIsAnotherPress() {
        var id = fresh();
        List<Integer> first = note(hers, id, "nape").path("facts");
        var replayed = note(thiefs, id, "nape");
        assertThat(replayed.statusCode()).isEqualTo(201);
        assertThat(replayed.<List<Integer>>path("facts")).doesNotContainAnyElementsOf(first);
        assertThat(note(thiefs, fresh(), "nape").statusCode()).isEqualTo(201);
        assertThat(note(hers, id, "nape").<List<Integer>>path("facts")).isEqualTo(first);
    }

    /** Nor does it tell by a refusal that there was such a press. */
    @Test
    void anIdThatSomebodyElseUsedFirstIsStillHers() {
        var id = fresh();
        assertThat(note(thiefs, id, "something else").statusCode()).isEqualTo(201);
        var hurt = note(hers, id, "burns");
        assertThat(hurt.statusCode()).as(hurt.asString()).isEqualTo(201);
        assertThat(note(house.own, id, "at the server").statusCode()).isEqualTo(201);
    }

    /** Of records of clients, which are no facts. */
    @Test
    void nobodysRecordIsFoundByAnId() {
        house.unlock(hers, Role.STYLIST);
        house.unlock(thiefs, Role.DESK);
        var id = "x".repeat(64);
        Map<String, String> record = Map.of("label", "M. A.", "press", id);
        var first = hers.post("/clients", record).header("Location");
        assertThat(hers.post("/clients", record).header("Location")).isEqualTo(first);
        assertThat(thiefs.post("/clients", record).header("Location"))
                .matches(".*/clients/[0-9]+")
                .isNotEqualTo(first);
    }
}
