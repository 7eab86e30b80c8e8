package rinsebell.app.press;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.app.RunningSalon;

/** A press that waited on its tablet until the server was back tells how old it is, and is never refused for that. */
class LatePressTest {
    private static final String HEAD = "/visits/{id}";

    @TempDir
    private Path folder;

    private ExampleSalon opened;
    private RunningSalon salon;
    private String visit;

    @BeforeEach
    void open() {
        opened = ExampleSalon.open(folder);
        salon = opened.salon();
        visit = opened.examples().address(HEAD);
    }

    @AfterEach
    void close() {
        opened.close();
    }

    /** The client came a few seconds ago: a minute is too old, and so is a year; the others are no ages. */
    @ParameterizedTest
    @CsvSource({
        "age=0, false",
        "age=60000, true",
        "age=31536000000, true",
        "age=-60000, true",
        "age=soon, true",
        "age=99999999999999999999, true",
        "age=, true",
        "'', true"
    })
    void isTakenAtTheEarliestInstantOrNowAndMarked(String age, boolean unsure) {
        Response answer = scalp(age, UUID.randomUUID().toString());
        assertThat(answer.statusCode()).isEqualTo(204);
        assertThat(answer.header("Rinsebell-Unsure")).isEqualTo(unsure ? "true" : null);
        assertThat(this.<Boolean>last("unsure")).isEqualTo(unsure);
        assertThat(Instant.parse(last("happened"))).isBetween(arrived(), now());
        assertThat(saysUnsure(answer.header("Rinsebell-Next"))).isEqualTo(unsure);
    }

    @Test
    void whatTheTabletCouldNotKnowIsTakenWhenItCouldBe() {
        scalp("age=3600000", UUID.randomUUID().toString());
        assertThat(Instant.parse(last("happened"))).isEqualTo(arrived());
    }

    @Test
    void theSamePressAtAnotherAgeIsTheSamePress() {
        String id = UUID.randomUUID().toString();
        String first = scalp("age=1", id).header("Rinsebell-Next");
        int before = last("seq");
        assertThat(scalp("age=7000", id).header("Rinsebell-Next")).isEqualTo(first);
        assertThat(this.<Integer>last("seq")).isEqualTo(before);
    }

    /** What somebody typed is refused, so that they can type it again. */
    @Test
    void whatIsTypedIsRefusedAsEver() {
        assertThat(scalp("age=1000&minutesAgo=5", UUID.randomUUID().toString()).statusCode())
                .isEqualTo(409);
    }

    @Test
    void theMarkSurvivesARestartAndADatabaseThatIsMadeAgain() throws IOException {
        scalp("age=60000", UUID.randomUUID().toString());
        salon.stop();
        salon.start();
        assertThat(this.<Boolean>last("unsure")).isTrue();
        assertThat(saysUnsure("/day")).isTrue();
        salon.stop();
        Files.delete(folder.resolve("rinsebell.mv.db"));
        salon.start();
        assertThat(given(salon.request()).get("/api/floor").<String>path("rebuilt"))
                .isNotNull();
        assertThat(this.<Boolean>last("unsure")).isTrue();
        assertThat(saysUnsure("/day")).isTrue();
    }

    /** The age that a press tells ends where it was sent; no screen waits for an answer for 30 s. */
    @ParameterizedTest
    @CsvSource({
        "20000, , 20",
        "20000, 5000, 25",
        "900, , 0",
        "40000, , 0",
        "-20000, , 0",
        "900, 5000, 5",
        "40000, 5000, 5",
        "soon, 5000, 5"
    })
    void isOlderByWhatHeldItUpOnItsWay(String way, String age, int secondsAgo) {
        var now = Instant.parse(given(salon.request()).get("/api/floor").path("now"));
        var sent = way.equals("soon") ? way : String.valueOf(now.toEpochMilli() - Long.parseLong(way));
        var form = given(salon.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon.url())
                .header("Rinsebell-Part", "answer")
                .header("Rinsebell-Sent", sent)
                .body("press=" + UUID.randomUUID() + "&label=M.+A.&place=bench&age=" + age);
        var answer = (age == null ? form : form.header("Rinsebell-Again", "true")).post("/visits");
        String visit = answer.header("Rinsebell-Next");
        var arrived = Instant.parse(given(salon.request()).get("/api" + visit).path("arrivedAt"));
        assertThat(Duration.between(arrived, now).toMillis() / 1000.0).isCloseTo(secondsAgo, within(0.9));
    }

    private Response scalp(String more, String id) {
        return given(salon.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon.url())
                .header("Rinsebell-Part", "answer")
                .header("Rinsebell-Again", "true")
                .body("press=" + id + "&finding=fine&" + more)
                .post(visit + "/scalp");
    }

    /** In the text of the page. */
    private boolean saysUnsure(String path) {
        String page = given(salon.request()).get(path).asString();
        return Pattern.compile(">[^<]*time unsure").matcher(page).find();
    }

    private Instant arrived() {
        return Instant.parse(given(salon.request()).get("/api" + visit).path("arrivedAt"));
    }

    private Instant now() {
        return Instant.parse(given(salon.request()).get("/api/floor").path("now"))
                .plus(Duration.ofMillis(1));
    }

    /** Of the one look at the scalp. */
    private <T> T last(String field) {
        return given(salon.request()).get("/api/log").path("find { it.kind == 'scalp-checked' }." + field);
    }
}
