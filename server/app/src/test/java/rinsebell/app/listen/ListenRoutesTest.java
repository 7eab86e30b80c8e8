package rinsebell.app.listen;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;
import rinsebell.app.time.MachineTime;

/** Over real HTTP: what devices say of themselves is shown, and keeps nobody busy. */
class ListenRoutesTest {
    private static final Pattern NUMBER = Pattern.compile("\"n\":(\\d+)");
    private static final int PRESSES = 200;

    private final MachineTime time = new MachineTime();
    private final RunningSalon salon;

    ListenRoutesTest(@TempDir Path folder) {
        salon = new RunningSalon(folder);
    }

    @AfterEach
    void end() {
        salon.close();
    }

    private void says(String state) {
        given(salon.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon.url())
                .body("tab=aaaaaaaa&ear=all&checked=true&state=" + state)
                .post("/listening")
                .then()
                .statusCode(204);
    }

    /** How often something new was shown so far. */
    private long number() {
        var beat = NUMBER.matcher(
                given(salon.request()).get("/feed/once?board=device").asString());
        assertThat(beat.find()).isTrue();
        return Long.parseLong(beat.group(1));
    }

    @Test
    void whoeverChangesAgainAndAgainIsDrawnOnceASecond() {
        var before = number();
        var began = time.monotonicNanos();
        for (var i = 0; i < PRESSES / 2; i++) {
            List.of("on", "off").forEach(this::says);
        }
        var seconds = TimeUnit.NANOSECONDS.toSeconds(time.monotonicNanos() - began);
        await().until(() -> number() > before);
        assertThat(number() - before).isLessThanOrEqualTo(seconds + 2).isLessThan(PRESSES / 2);
    }
}
