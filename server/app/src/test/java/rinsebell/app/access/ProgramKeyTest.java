package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.salon.Role;

/** Programs with keys of their own. What they are answered is of RFC 6750, sections 2.1 and 3.1. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ProgramKeyTest {

    private static final Map<String, Object> SOMEBODY = Map.of("label", "Ines", "place", "chair-2");

    private SalonWithStaff house;
    private Path data = Path.of("");

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        house = new SalonWithStaff(folder);
        data = folder.resolve("data");
    }

    @AfterAll
    void close() {
        house.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/api/floor", "/api/bells", "/api/salon", "/api/products", "/api/visits", "/api/log"})
    void oneThatReadsSeesTheFloor(String path) {
        assertThat(house.program("light", "program-reads").get(path).statusCode())
                .isEqualTo(200);
    }

    @Test
    void oneThatReadsPressesNothing() {
        var answer = house.program("light", "program-reads").program("/api/visits", SOMEBODY);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.<String>path("code")).isEqualTo("key-not-for-that");
        assertThat(answer.header("WWW-Authenticate")).isEqualTo("Bearer error=\"insufficient_scope\"");
        assertThat(house.own.get("/api/visits").<List<String>>path("label")).doesNotContain("Ines");
    }

    @Test
    void oneThatActsPressesAndIsNamed() {
        var till = house.program("till at the door", "program-acts");
        assertThat(till.program("/api/visits", Map.of("label", "Bo", "place", "chair-3"))
                        .statusCode())
                .isEqualTo(201);
        var page = house.own.get("/trail").asString();
        assertThat(page).contains("Bo: arrived", "till at the door");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/api/clients", "/api/lead", "/api/trail", "/api/policy", "/", "/devices", "/feed?board=desk"})
    void nothingElse(String path) {
        var answer = house.program("till", "program-acts").get(path);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.header("Rinsebell-Refused")).isEqualTo("key-not-for-that");
    }

    /** A cookie beside it, or that it comes from the machine itself, adds nothing. */
    @Test
    void aKeyCountsAlone() {
        var manager = house.tablet("manager's", "desk");
        house.unlock(manager, Role.MANAGER);
        assertThat(manager.get("/api/trail").statusCode()).isEqualTo(200);
        manager.showing("AAAAAAAAAAAAAAAAAAAAAAAA");
        var answer = manager.get("/api/floor");
        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.<String>path("code")).isEqualTo("key-unknown");
        assertThat(answer.header("WWW-Authenticate")).isEqualTo("Bearer error=\"invalid_token\"");
        assertThat(Tablet.atTheServer(house.salon)
                        .showing("nonsense")
                        .get("/api/floor")
                        .statusCode())
                .isEqualTo(401);
    }

    @Test
    void takenBackItOpensNothing() {
        var program = house.program("lost", "program-reads");
        assertThat(program.get("/api/floor").statusCode()).isEqualTo(200);
        var page = house.own.get("/devices").asString();
        var out = page.substring(0, page.indexOf("/throw-out", page.indexOf(">lost<")));
        var number = out.substring(out.lastIndexOf('/') + 1);
        house.own.post("/devices/" + number + "/throw-out", Map.of());
        assertThat(program.get("/api/floor").statusCode()).isEqualTo(401);
    }

    @Test
    void whatADeviceShowsIsNoKeyAndTheOtherWayRound() {
        var tablet = house.tablet("tablet", "desk");
        var token = tablet.cookies().get("__Host-device");
        assertThat(Tablet.overHttps(house.salon)
                        .showing(java.util.Objects.requireNonNull(token))
                        .get("/api/floor")
                        .statusCode())
                .isEqualTo(401);
        var page = house.own
                .post("/devices/programs", Map.of("program", "x", "scope", "program-acts"))
                .asString();
        var key = page.replaceFirst("(?s).*<p class=\"typed\">([^<]*)<.*", "$1");
        var posing = Tablet.overHttps(house.salon);
        posing.cookies().put("__Host-device", key);
        assertThat(posing.get("/api/floor").statusCode()).isEqualTo(403);
        assertThat(posing.get("/desk").asString()).contains("Not in yet");
    }

    /** Over plain HTTP others read it along, but not on the machine itself. */
    @Test
    void neverInTheClearOverTheNetwork() {
        var page = house.own
                .post("/devices/programs", Map.of("program", "clear", "scope", "program-reads"))
                .asString();
        var key = page.replaceFirst("(?s).*<p class=\"typed\">([^<]*)<.*", "$1");
        var answer = Tablet.onTheNetwork(house.salon).showing(key).get("/api/floor");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.<String>path("code")).isEqualTo("read-along");
        assertThat(Tablet.atTheServer(house.salon)
                        .showing(key)
                        .get("/api/floor")
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void itIsShownOnceAndKeptByNobody() throws Exception {
        var page = house.own
                .post("/devices/programs", Map.of("program", "once", "scope", "program-reads"))
                .asString();
        var key = page.replaceFirst("(?s).*<p class=\"typed\">([^<]*)<.*", "$1");
        assertThat(house.own.get("/devices").asString()).contains(">once<").doesNotContain(key);
        assertThat(Files.readString(data.resolve("keyring.json"))).doesNotContain(key);
    }

    @Test
    void whatIsWrongIsSaidAndNothingIsLost() {
        var answer = house.own.post("/devices/programs", Map.of("program", "till 2", "scope", "everything"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains("value=\"till 2\"").doesNotContain("class=\"typed\"");
    }
}
