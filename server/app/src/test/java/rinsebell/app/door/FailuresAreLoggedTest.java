package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.db.DatabaseAway;

/** What fails inside is told to the log, by the route and never by the address (OWASP ASVS 5.0, 16.3.4 and 16.5.1). */
class FailuresAreLoggedTest {
    @Test
    void whatNobodyExpectedIsLoggedWithoutWhatWasTyped() {
        var heard = new ListAppender<ILoggingEvent>();
        heard.start();
        var door = (Logger) LoggerFactory.getLogger(Door.class);
        door.addAppender(heard);
        try (var server = new ServerUnderTest(List.of(routes -> {
            routes.get("/bug/{name}", ctx -> {
                throw new IllegalStateException("inside");
            });
            routes.get("/deep/{name}", ctx -> {
                throw new StackOverflowError("inside");
            });
            routes.get("/away/{name}", ctx -> {
                throw new DatabaseAway(new IllegalStateException("inside"));
            });
        }))) {
            for (var path : List.of("/bug/Ines", "/deep/Ines", "/away/Ines")) {
                var answer = io.restassured.RestAssured.given(server.request()).get(path);
                assertThat(answer.statusCode()).as(path).isIn(500, 503);
                assertThat(answer.asString()).as(path).doesNotContain("inside");
            }
        } finally {
            door.detachAppender(heard);
        }
        assertThat(heard.list)
                .hasSize(3)
                .allMatch(event -> event.getLevel() == Level.ERROR)
                .noneMatch(event -> event.getFormattedMessage().contains("Ines"))
                .anyMatch(event -> event.getFormattedMessage().contains("GET /bug/{name}"));
    }
}
