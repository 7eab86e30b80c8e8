package rinsebell.app.press;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static rinsebell.floor.testing.Saturday.TEN;

import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rinsebell.app.desk.Answer;
import rinsebell.app.desk.LedgerByHand;
import rinsebell.app.door.ProblemException;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.page.Answers;
import rinsebell.app.page.FormRoutes;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.testing.Story;
import rinsebell.web.form.Fields;

/** A disk that hangs: nobody is told more than is known. */
class PatienceTest {

    private static final Address BREAK = new Address("day", 0, "break");

    private final LedgerByHand ledger = new LedgerByHand();
    private final Story story = Story.stocked().at(TEN);
    private final TimeByHand time = new TimeByHand(TEN);
    private final SalonClock clock = SalonClock.startingAtTheWall(time, 1);
    private final HouseByHand house = new HouseByHand(story.floor(), clock, ledger);
    private final Pressing patient = new Pressing(house.desk, clock, ClientBook.EMPTY);
    private final Pressing shortly = new Pressing(house.desk, clock, ClientBook.EMPTY, Duration.ofSeconds(1));
    private final Pressing hasty = new Pressing(house.desk, clock, ClientBook.EMPTY, Duration.ZERO);

    @AfterEach
    void close() {
        ledger.letGo();
        house.close();
    }

    @Test
    void whatIsBeingWrittenIsNotKnownYetAndTheSamePressIsToldInTheEnd() throws Exception {
        try (ServerUnderTest server = server()) {
            CompletableFuture<Pressing.Result> writing = beingWritten("press-one");
            api(server, "press-one")
                    .statusCode(503)
                    .body("code", equalTo("not-known-yet"))
                    .header("Retry-After", "1");
            page(server, "press-one")
                    .statusCode(503)
                    .body(containsString("not known yet"))
                    .header("Retry-After", "1");
            api(server, "press-two").statusCode(503).body("code", equalTo("not-saved"));
            ledger.letGo();
            assertThat(((Pressing.Asked) writing.join()).answer()).isInstanceOf(Answer.Decided.class);
            assertThat(ledger.facts()).hasSize(1);
            api(server, "press-one").statusCode(201).body("facts[0]", equalTo((int)
                    ledger.facts().get(0).seq()));
            assertThat(ledger.facts()).hasSize(1);
        }
    }

    /** Once the clock is put right, every fact that was told by the old one must stand before it. */
    @Test
    void whileTheClockIsBeingPutRightNothingElseIsTaken() throws Exception {
        time.setWall(Duration.ofHours(14));
        ledger.hold();
        CompletableFuture<Optional<Answer>> shift =
                CompletableFuture.supplyAsync(() -> shortly.confirmClock("press-one", ""));
        ledger.awaitForce();
        assertThat(press(shortly, "press-two")).isEqualTo(new Answer.NotSaved(false));
        shortly.whileClockStands(() -> {
            throw new AssertionError("the clock does not stand");
        });
        assertThat(shift).isNotDone();
        ledger.letGo();
        assertThat(shift.join().orElseThrow()).isInstanceOf(Answer.Decided.class);
        assertThat(press(shortly, "press-two")).isInstanceOf(Answer.Decided.class);
        assertThat(ledger.facts().get(1).happened()).isEqualTo(TEN.plus(Duration.ofHours(14)));
    }

    /** Every instant of the salon would move along, and nothing could be told before or after it any more. */
    @Test
    void aClockThatCannotBeRightIsNotConfirmed() {
        for (Instant absurd : List.of(Instant.parse("1970-01-01T00:00:00Z"), Instant.parse("2100-01-01T00:00:00Z"))) {
            time.setWall(Duration.between(Instant.ofEpochMilli(time.wallMillis()), absurd));
            assertThatThrownBy(() -> patient.confirmClock("press-one", ""))
                    .isInstanceOf(ProblemException.class)
                    .hasMessage("clock-absurd");
        }
        time.setWall(Duration.ofMillis(-1));
        assertThat(patient.confirmClock("press-one", "").orElseThrow()).isInstanceOf(Answer.Decided.class);
        assertThat(ledger.facts()).hasSize(1);
    }

    private CompletableFuture<Pressing.Result> beingWritten(String id) throws InterruptedException {
        ledger.hold();
        var writing =
                CompletableFuture.supplyAsync(() -> patient.press(BREAK, fields(), id, new Pressing.Presser("", null)));
        ledger.awaitForce();
        return writing;
    }

    private Answer press(Pressing pressing, String id) {
        return ((Pressing.Asked) pressing.press(BREAK, fields(), id, new Pressing.Presser("", null))).answer();
    }

    private Fields fields() {
        return Fields.of("staff", staff());
    }

    private String staff() {
        return story.stylist().value() + "";
    }

    private ServerUnderTest server() {
        Answers answers = new Answers();
        FormRoutes forms = new FormRoutes(house.live, answers, ClientBook.EMPTY);
        return new ServerUnderTest(
                List.of(new ApiPresses(hasty, house.live), new PressRoutes(hasty, house.live, answers, forms)));
    }

    private ValidatableResponse api(ServerUnderTest server, String id) {
        return given(server.request())
                .contentType("application/json")
                .header("Idempotency-Key", id)
                .body(Map.of("staff", story.stylist().value()))
                .post("/api/day/break")
                .then();
    }

    private ValidatableResponse page(ServerUnderTest server, String id) {
        return given(server.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", server.url(""))
                .body("press=" + id + "&staff=" + staff())
                .post("/day/break")
                .then();
    }
}
