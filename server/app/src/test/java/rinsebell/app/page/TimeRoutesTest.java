package rinsebell.app.page;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static rinsebell.floor.testing.Saturday.TEN;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;

class TimeRoutesTest {
    private final TimeByHand time = new TimeByHand(TEN);
    private final SalonClock clock = SalonClock.startingAtTheWall(time, 30);

    @Test
    void tellsTheSalonsTimeOfThisInstant() {
        try (var server = new ServerUnderTest(List.of(new TimeRoutes(clock)))) {
            for (var seconds : List.of(0, 1)) {
                time.pass(Duration.ofSeconds(seconds));
                given(server.request())
                        .get("/clock")
                        .then()
                        .statusCode(200)
                        .contentType("application/json")
                        .header("Cache-Control", "no-store")
                        .body("now", equalTo(TEN.plusSeconds(30 * seconds).toEpochMilli()))
                        .body("speed", equalTo(30));
            }
        }
    }
}
