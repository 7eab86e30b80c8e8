package rinsebell.app.press;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static rinsebell.floor.testing.Saturday.TEN;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import rinsebell.app.desk.LedgerByHand;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.page.Answers;
import rinsebell.app.page.FormRoutes;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.time.ClockMark;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.Fact;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.testing.Story;

/** The power was off from ten o'clock on, and the machine came up without knowing for how long. */
class MissedTimeTest {
    private final LedgerByHand ledger = new LedgerByHand();
    private final Story story = Story.stocked().at(TEN);
    private final TimeByHand time = new TimeByHand(TEN.minus(Duration.ofMinutes(1)));
    private final SalonClock clock = SalonClock.goingOnFrom(new ClockMark("boot-0", 9_000, TEN, false, 0), time, 1);

    private HouseByHand house() {
        return new HouseByHand(story.floor(), clock, ledger);
    }

    private Pressing pressing(HouseByHand house) {
        return new Pressing(house.desk, clock, ClientBook.EMPTY);
    }

    private ServerUnderTest server(HouseByHand house) {
        var answers = new Answers();
        var forms = new FormRoutes(house.live, answers, ClientBook.EMPTY);
        return new ServerUnderTest(List.of(
                new PageRoutes(house.live, answers),
                forms,
                new PressRoutes(pressing(house), house.live, answers, forms)));
    }

    /** Two minutes after the start the machine learns that it was off for 23 minutes, and a person says that this is right. */
    @Test
    void isOfferedToBeCaughtUpOnAsAfterAnOutage() throws Exception {
        story.arrivesFine();
        time.pass(Duration.ofMinutes(2));
        time.setWall(Duration.ofMinutes(24));
        try (var house = house();
                var server = server(house)) {
            pressing(house).confirmClock("press-one", "");
            assertCaughtUpOn(server);
        }
    }

    private void assertCaughtUpOn(ServerUnderTest server) {
        assertThat(clock.now()).isEqualTo(TEN.plus(Duration.ofMinutes(25)));
        assertThat(ledger.facts())
                .extracting(Fact::event)
                .containsExactly(
                        new DayEvent.TimeMissed(Duration.ofMinutes(23)),
                        new DayEvent.Outage(TEN, TEN.plus(Duration.ofMinutes(23))));
        page(server, "/bells").then().body(containsString("No server ran 10:00 to 10:23: catch up"));
        page(server, "/day/caught-up").then().body(containsString("from 10:00 to 10:23"));
        given(server.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", server.url(""))
                .redirects()
                .follow(false)
                .body("press=press-two")
                .post("/day/caught-up")
                .then()
                .statusCode(303);
        page(server, "/bells").then().body(not(containsString("No server ran")));
    }

    @Test
    void concernsNobodyInAnEmptySalon() {
        time.setWall(Duration.ofMinutes(24));
        try (var house = house()) {
            pressing(house).confirmClock("press-one", "");
        }
        assertThat(ledger.facts())
                .extracting(Fact::event)
                .containsExactly(new DayEvent.TimeMissed(Duration.ofMinutes(23)));
    }

    private io.restassured.response.Response page(ServerUnderTest server, String path) {
        return given(server.request()).header("Accept", "text/html").get(path);
    }
}
