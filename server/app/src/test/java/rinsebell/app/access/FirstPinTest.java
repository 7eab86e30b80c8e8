package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rinsebell.app.Main;
import rinsebell.app.RunningSalon;

/** How a salon comes by its first PIN, and by another one when it is forgotten; over plain HTTP, as on the first day. */
class FirstPinTest {
    private static final String PIN = "402917";

    @TempDir
    private Path folder = Path.of("");

    private RunningSalon salon;
    private Tablet own;

    @BeforeEach
    void open() {
        salon = new RunningSalon(folder, "--name", Tablet.NAME);
        own = Tablet.atTheServer(salon);
        own.program("/api/salon", Map.of("name", "Pepperbox Yard", "chairs", 2, "basins", 1, "bench", 1, "zone", "UTC"))
                .then()
                .statusCode(201);
        own.program("/api/staff", Map.of("name", "Mara", "role", "manager"))
                .then()
                .statusCode(201);
    }

    @AfterEach
    void close() {
        salon.close();
    }

    private int choose(String current, String fresh) {
        return own.post("/pins/2", Map.of("current", current, "fresh", fresh, "again", fresh))
                .statusCode();
    }

    @Test
    void theServersOwnScreenIsOpenUntilThen() {
        assertThat(own.get("/policy").statusCode()).isEqualTo(200);
        assertThat(own.post("/devices", Map.of("name", "tablet", "purpose", "desk"))
                        .statusCode())
                .as("but lets nothing in")
                .isEqualTo(409);
        assertThat(choose("", "123456")).isEqualTo(422);
        assertThat(choose("", PIN)).isEqualTo(303);
        assertThat(own.get("/policy").statusCode()).isEqualTo(403);
        assertThat(own.get("/desk").statusCode()).isEqualTo(200);
        assertThat(choose("", "730586")).as("nobody has unlocked it").isEqualTo(403);
    }

    @Test
    void anotherPinAsksForTheOneOfNowAndLocksEverywhere() {
        choose("", PIN);
        unlock();
        assertThat(choose("402918", "730586")).isEqualTo(422);
        assertThat(choose(PIN, "730586")).isEqualTo(303);
        assertThat(own.get("/policy").statusCode()).isEqualTo(403);
    }

    private void unlock() {
        assertThat(own.post("/unlock", Map.of("person", "2", "pin", PIN, "page", "/policy"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(own.get("/policy").statusCode()).isEqualTo(200);
    }

    @Test
    void aForgottenOneIsTakenAwayAtTheConsole() {
        choose("", PIN);
        assertThat(own.get("/policy").statusCode()).isEqualTo(403);
        assertThat(new CommandLine(new Main()).execute("reset-pins", "--data", folder.toString()))
                .isZero();
        assertThat(own.get("/policy").statusCode()).isEqualTo(200);
        assertThat(choose("", "730586")).isEqualTo(303);
    }

    private String code() {
        var page = own.post("/devices", Map.of("name", "tablet", "purpose", "desk"))
                .asString();
        return page.replaceAll("(?s).*<p class=\"typed\">([0-9A-Z-]+)</p>.*", "$1");
    }

    /** Over plain HTTP others read along: what is private is not even asked for there, but bells and presses are. */
    @Test
    void nothingPrivateGoesOverPlainHttp() {
        choose("", PIN);
        unlock();
        var tablet = Tablet.onTheNetwork(salon);
        assertThat(tablet.post("/join", Map.of("code", code())).statusCode())
                .as("unless a manager allows it")
                .isEqualTo(403);
        assertThat(own.post("/devices/plain", Map.of("plain", "yes")).statusCode())
                .isEqualTo(303);
        assertThat(tablet.post("/join", Map.of("code", code())).statusCode()).isEqualTo(303);
        assertThat(tablet.get("/desk").asString())
                .startsWith("<!doctype html>\n<html data-plain ")
                .contains("Others on this network can read along");
        var refused = tablet.get("/clients");
        assertThat(refused.statusCode()).isEqualTo(403);
        assertThat(refused.asString()).contains("Not over this connection").doesNotContain("type=\"password\"");
        assertThat(tablet.post("/unlock", Map.of("person", "2", "pin", PIN)).statusCode())
                .isEqualTo(403);
        own.post("/devices/plain", Map.of("plain", "no"));
        assertThat(tablet.get("/desk").statusCode()).isEqualTo(403);
    }

    @Test
    void aPageThatAPinOpenedSaysSoAndOthersDoNot() {
        assertThat(own.get("/policy").asString()).doesNotContain("data-private");
        choose("", PIN);
        unlock();
        assertThat(own.get("/policy").asString()).startsWith("<!doctype html>\n<html data-private=\"HOUSE\" ");
        assertThat(own.get("/desk").asString()).doesNotContain("data-private");
    }
}
