package rinsebell.app.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** Presses of programs that were on their way for a while; each is held against the description. */
class AgeTest {
    private final RunningSalon salon;
    private final Program program;

    AgeTest(@TempDir Path folder) {
        salon = new RunningSalon(folder);
        program = new Program(salon);
        program.press("/api/salon", Map.of("name", "Salon", "chairs", 2, "basins", 1, "zone", "Europe/Berlin"));
    }

    @AfterEach
    void end() {
        salon.close();
    }

    @Test
    void aPressHappenedAsLongAgoAsItSays() {
        assertThat(secondsAgo(welcomed(Map.of("age", 120_000)))).isCloseTo(120, within(20L));
        assertThat(secondsAgo(welcomed(Map.of("age", 60_000, "minutesAgo", 2)))).isCloseTo(180, within(20L));
        assertThat(secondsAgo(welcomed(Map.of()))).isCloseTo(0, within(20L));
    }

    @Test
    void whatNobodyKnowsForSureIsUnsure() {
        assertUnsure(welcomed(Map.of("age", 120_000)), false);
        assertUnsure(welcomed(Map.of("age", 120_000, "told", "unsure")), true);
        assertThat(secondsAgo(welcomed(Map.of("age", 120_000, "told", "unsure"))))
                .isCloseTo(120, within(20L));
    }

    /** The client came after what the device's clock says: it is put right, and nothing is lost. */
    @Test
    void whatIsUnsureAndImpossibleIsPutRight() {
        long visit = welcomed(Map.of());
        var look = Map.of("finding", "fine", "age", 3_600_000, "told", "unsure");
        assertUnsure(program.press("/api/visits/" + visit + "/scalp", look), true);
    }

    @Test
    void theSamePressMayTellAnotherAge() {
        var id = Program.freshId();
        var first = welcome(Map.of("age", 1_000));
        long fact = Program.taken(program.send("/api/visits", first, id));
        var again = welcome(Map.of("age", 9_000, "told", "unsure"));
        assertThat(Program.taken(program.send("/api/visits", again, id))).isEqualTo(fact);
    }

    private long welcomed(Map<String, Object> more) {
        return program.press("/api/visits", welcome(more));
    }

    private static Map<String, Object> welcome(Map<String, Object> more) {
        var all = new HashMap<String, Object>(Map.of("label", "M. A.", "place", "bench"));
        all.putAll(more);
        return all;
    }

    private long secondsAgo(long visit) {
        String at = program.read("/api/visits/" + visit).extract().path("arrivedAt");
        return Instant.parse(at)
                .until(Instant.parse(program.read("/api/floor").extract().path("now")), ChronoUnit.SECONDS);
    }

    private void assertUnsure(long fact, boolean unsure) {
        program.read("/api/log").body("find { it.seq == " + fact + " }.unsure", equalTo(unsure));
    }
}
