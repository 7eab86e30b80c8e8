package rinsebell.app.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** A day of one salon told wholly by a program, over real HTTP and on a real disk. */
class ApiDayTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aHeadFromWelcomeToLeaving() {
        try (RunningSalon salon = new RunningSalon(folder)) {
            new Day(new Program(salon)).tell();
        }
    }

    /** One head, done on its scalp and then again off it. */
    private static final class Day {
        private final Program program;
        private long ines;
        private long cream;
        private long developer;
        private long visit;

        Day(Program program) {
            this.program = program;
        }

        void tell() {
            setUp();
            welcome();
            long bowl = mix("first", cream);
            long first = putOn(bowl);
            watch(first);
            rinse(first);
            nextRoundIsOffScalpOnly();
            discomfort();
            leave();
        }

        private void setUp() {
            program.read("/api/salon").body("setUp", equalTo(false));
            program.press("/api/salon", house());
            ines = program.press("/api/staff", Map.of("name", "Ines", "role", "stylist"));
            cream = program.press("/api/products", Shelf.cream());
            program.press("/api/products", Shelf.powder());
            developer = program.press("/api/products", Shelf.developer());
            program.read("/api/salon").body("setUp", equalTo(true)).body("staff.name", contains("Ines"));
            program.read("/api/products").body("directions.name", hasItems("Mild cream", "Powder lightener"));
        }

        private void welcome() {
            visit = program.press(
                    "/api/visits", Map.of("label", "M. A.", "place", "chair-1", "stylist", ines, "minutesAgo", 50));
            onHead("gate", Map.of("scalp", "fine", "earlierReaction", "no", "metal", "none", "minutesAgo", 49));
            onHead("gate", Map.of("skinTest", "none", "under16", "no", "minutesAgo", 49));
            program.read("/api/visits/" + visit)
                    .body("gate.scalp", equalTo("fine"))
                    .body("gate.under16", equalTo("no"))
                    .body("place", equalTo("chair-1"))
                    .body("leftAt", nullValue());
        }

        private long mix(String reason, long product) {
            return Program.taken(program.send(
                            "/api/bowls",
                            Map.of("visit", visit, "reason", reason, "minutesAgo", 45, "portions", portions(product)))
                    .body("cautions.code", hasItem("CONTAINS_PEROXIDE")));
        }

        private List<Map<String, Object>> portions(long product) {
            return List.of(Map.of("product", product, "grams", 60), Map.of("product", developer, "grams", 60));
        }

        private long putOn(long bowl) {
            long on = onHead(
                    "put-on",
                    Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp", "by", ines, "minutesAgo", 40));
            onHead("last-on", Map.of("minutesAgo", 30));
            program.read("/api/visits/" + visit)
                    .body("applications", hasSize(1))
                    .body("applications[0].id", equalTo((int) on))
                    .body("applications[0].lastOn", notNullValue())
                    .body("readyFrom", notNullValue())
                    .body("rinseBy.why", equalTo("developed"))
                    .body("rinseBy.hard", equalTo(true))
                    .body("whileOn.known", equalTo(true))
                    .body("whileOn.offScalpOnly", equalTo(false))
                    .body("whileOn.heats.dryer.allowed", equalTo(false))
                    .body("whileOn.heats.gentle-steam.allowed", equalTo(true))
                    .body("nextStrandCheck", notNullValue());
            assertThat(minutes("applications[0].firstOn", "applications[0].lastOn"))
                    .isEqualTo(10);
            program.read("/api/bowls/" + bowl).body("touched", equalTo(true)).body("portions", hasSize(2));
            program.read("/api/bells").body("kind", hasItems("rinse", "strand-check"));
            return on;
        }

        private void watch(long on) {
            onHead("strand", Map.of("level", 7, "tone", "orange", "decision", "5", "minutesAgo", 20));
            onHead("scalp", Map.of("finding", "fine", "minutesAgo", 20));
            program.send("/api/visits/" + visit + "/heat-on", Map.of("heat", "dryer"))
                    .statusCode(409)
                    .body("code", equalTo("HEAT_NOT_ALLOWED"))
                    .body("canBeFact", equalTo(true));
            onHead("heat-on", Map.of("heat", "gentle-steam", "minutesAgo", 15));
            onHead("heat-off", Map.of("minutesAgo", 10));
            long look = onHead("strand", Map.of("level", 8, "decision", "rinse", "application", on));
            program.press("/api/facts/" + look + "/set-back", Map.of("earlier", 2));
            program.read("/api/visits/" + visit)
                    .body("heats.heat", contains("gentle-steam"))
                    .body("applications[0].checks.decision", contains("5", "rinse"))
                    .body("applications[0].checks.level", contains(7, 8))
                    .body("rinseBy.why", equalTo("decided"));
            onHead("turn", Map.of("basin", "B"));
            onHead("services", Map.of("services", List.of("cut", "bowl")));
            String now = program.read("/api/floor").extract().path("now");
            onHead("end-told", Map.of("until", instant(now).plusSeconds(3600).toString()));
            program.read("/api/floor")
                    .body("turns.visit", contains((int) visit))
                    .body("turns.basin", contains("basin-B"))
                    .body("pins", equalTo(List.of(Map.of("visit", (int) visit, "basin", "basin-B"))));
            program.read("/api/visits/" + visit)
                    .body("services", contains("bowl", "cut"))
                    .body("toldEnd", notNullValue());
            Map<String, String> told = program.read("/api/log").extract().path("find { it.seq == " + look + " }");
            assertThat(Duration.between(instant(told.get("standsAt")), instant(told.get("happened"))))
                    .isEqualTo(Duration.ofMinutes(2));
        }

        private void rinse(long first) {
            onHead("rinse", Map.of("basin", "A", "minutesAgo", 1, "applications", List.of(first)));
            onHead("towel-dried", Map.of());
            onHead("scalp", Map.of("finding", "fine"));
            onHead("lift", Map.of("reached", false));
            program.read("/api/floor")
                    .body("visits[0].place", equalTo("basin-A"))
                    .body("visits[0].applications[0].ended.how", equalTo("rinsed"))
                    .body("visits[0].round.liftReached", equalTo(false))
                    .body("basins[0].visits", contains((int) visit));
            onHead("move", Map.of("place", "chair-1"));
        }

        private void nextRoundIsOffScalpOnly() {
            long bowl = program.press(
                    "/api/bowls", Map.of("visit", visit, "reason", "another-round", "portions", portions(cream)));
            Map<String, Object> onScalp = Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp");
            program.send("/api/visits/" + visit + "/put-on", onScalp)
                    .statusCode(409)
                    .contentType("application/problem+json")
                    .body("canBeFact", equalTo(true))
                    .body("reasons.code", hasItem("ROUND_OFF_SCALP_ONLY"));
            onHead("put-on", Map.of("bowl", bowl, "area", "lengths", "zone", "off-scalp"));
            program.read("/api/visits/" + visit).body("whileOn.offScalpOnly", equalTo(true));
        }

        private void discomfort() {
            long tingling = onHead("discomfort", Map.of("grade", "tingling"));
            onHead("scalp", Map.of("finding", "pink"));
            long burning = onHead("discomfort", Map.of("grade", "burning"));
            program.read("/api/bells")
                    .body("find { it.kind == 'burning' }.stage.priority", equalTo("high"))
                    .body("find { it.kind == 'burning' }.stage.audience", equalTo("everyone"));
            program.press(
                    "/api/bells/acknowledge",
                    Map.of("kind", "burning", "subject", visit, "anchor", burning, "by", ines));
            program.read("/api/bells").body("find { it.kind == 'burning' }.seen", equalTo(true));
            onHead("rinse", Map.of("basin", "B"));
            program.press("/api/facts/" + burning + "/withdraw", Map.of("all", true));
            program.read("/api/bells").body("kind", not(hasItem("burning")));
            program.read("/api/visits/" + visit).body("complaints.grade", contains("tingling"));
            program.read("/api/log?visit=" + visit).body("findAll { it.corrects == " + burning + " }", hasSize(1));
            assertThat(tingling).isLessThan(burning);
        }

        private void leave() {
            onHead("scalp", Map.of("finding", "fine"));
            onHead("stop", Map.of());
            onHead("leave", Map.of());
            program.read("/api/visits/" + visit).body("leftAt", notNullValue());
            program.read("/api/log?visit=" + visit)
                    .body("kind", hasItems("arrived", "put-on", "strand-checked", "complained", "left"))
                    .body("stream", everyItem(equalTo("visit-" + visit)));
            program.send("/api/visits/" + visit + "/stop", Map.of())
                    .statusCode(409)
                    .body("code", equalTo("VISIT_OVER"))
                    .body("canBeFact", equalTo(false));
        }

        /** The whole minutes between two instants of this head. */
        private long minutes(String from, String to) {
            var head = program.read("/api/visits/" + visit).extract();
            return Duration.between(instant(head.path(from)), instant(head.path(to)))
                    .toMinutes();
        }

        private static Instant instant(@Nullable String text) {
            return Instant.parse(Objects.requireNonNull(text));
        }

        private long onHead(String press, Map<String, ?> body) {
            return program.press("/api/visits/" + visit + "/" + press, body);
        }
    }

    static Map<String, Object> house() {
        return Map.of("name", "Harbour Lane", "chairs", 8, "basins", 2, "bench", 4, "zone", "Europe/Berlin");
    }
}
