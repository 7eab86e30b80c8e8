package rinsebell.app.press;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.app.RunningSalon;

/** A plan that breaks a restriction, sent by a page: refused with two answers, of which the second is recorded. */
class RefusedPageTest {

    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"");

    @Test
    void alreadyDoneSendsWhatWasTyped(@TempDir Path folder) {
        try (ExampleSalon opened = ExampleSalon.open(folder)) {
            RunningSalon salon = opened.salon();
            PressExamples examples = opened.examples();
            String path = examples.address("/visits/{id}/put-on");
            Map<String, String> plan = Map.of(
                    "bowl",
                    examples.ids().get("BOWL") + "",
                    "area",
                    "regrowth",
                    "zone",
                    "on-scalp",
                    "note",
                    "a \"b\" <c>");
            Response refused = post(salon, path, plan);
            assertThat(refused.asString()).as("the form").contains(">a \"b\" &lt;c&gt;</textarea>");
            Map<String, String> hidden = second(refused, path);
            assertThat(hidden.remove("at")).isNotNull();
            Map<String, String> fact = new TreeMap<>(plan);
            fact.put("intent", "fact");
            assertThat(hidden).containsExactlyInAnyOrderEntriesOf(fact);
            assertThat(post(salon, path, hidden).statusCode()).isEqualTo(303);
            given(salon.request()).get("/api/bells").then().body("kind", hasItem("forbidden-zone"));
        }
    }

    /** A page from the browser's memory that was filled in anew: what is typed stands there, to be sent once more. */
    @Test
    void aFormSentTwiceWithSomethingElseComesBack(@TempDir Path folder) {
        try (ExampleSalon opened = ExampleSalon.open(folder)) {
            Map<String, String> typed = new TreeMap<>(Map.of("label", "N. O.", "place", "bench"));
            typed.put("press", UUID.randomUUID().toString());
            assertThat(post(opened.salon(), "/visits", typed).statusCode()).isEqualTo(303);
            typed.put("label", "P. Q.");
            Response again = post(opened.salon(), "/visits", typed);
            assertThat(again.statusCode()).isEqualTo(422);
            assertThat(again.asString()).contains("value=\"P. Q.\"", "press again");
            assertThat(again.asString()).doesNotContain("value=\"" + typed.get("press") + "\"");
        }
    }

    /** Powder at 60 g takes 60 g of developer, at most 7 g more; without any it is refused. Common practice, no source. */
    @Test
    void whatIsTypedIsJudgedBeforeItIsPressed(@TempDir Path folder) {
        try (ExampleSalon opened = ExampleSalon.open(folder)) {
            RunningSalon salon = opened.salon();
            List<Object> before = pressed(salon);
            Map<String, String> typed = new TreeMap<>(Map.of(
                    "portions.0.product", opened.examples().ids().get("PRODUCT") + "", "portions.0.grams", "60"));
            String page = post(salon, "/bowls/preview", typed)
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            assertThat(page).contains("<html", ": refused", "60 g in all", "value=\"60\"");
            String part = asScript(salon, "/bowls/preview", typed);
            assertThat(part).doesNotContain("<html").contains(": refused");
            typed.remove("portions.0.grams");
            assertThat(asScript(salon, "/bowls/preview", typed)).contains("as soon as enough is typed");
            String putOn = opened.examples().address("/visits/{id}/put-on") + "/preview";
            Map<String, String> on =
                    Map.of("bowl", opened.examples().ids().get("BOWL") + "", "area", "regrowth", "zone", "on-scalp");
            assertThat(asScript(salon, putOn, on)).contains("As a plan this is refused", "scalp");
            assertThat(post(salon, "/visits/999/put-on/preview", on).statusCode())
                    .isEqualTo(404);
            assertThat(asScript(salon, "/visits/preview", Map.of("services", "cut", "least", "20", "label", "M. A.")))
                    .doesNotContain("<html")
                    .contains("now, done");
            assertThat(pressed(salon)).isEqualTo(before);
        }
    }

    /** All that somebody pressed; plans are announced by themselves. */
    private static List<Object> pressed(RunningSalon salon) {
        return given(salon.request()).get("/api/log").jsonPath().getList("findAll { it.kind != 'turns-announced' }");
    }

    private static String asScript(RunningSalon salon, String path, Map<String, String> fields) {
        return post(salon, path, fields, Map.of("HX-Request", "true"))
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    /** What "already done" would send. */
    private static Map<String, String> second(Response refused, String path) {
        assertThat(refused.statusCode()).isEqualTo(409);
        String form = refused.asString();
        form = form.substring(form.lastIndexOf("action=\"" + path + "\""));
        Map<String, String> hidden = hidden(form.substring(0, form.indexOf("</form>")));
        hidden.remove("press");
        return hidden;
    }

    /** Pressed while the line was down, sent ten minutes later and refused: it was done when it was pressed. */
    @ParameterizedTest
    @CsvSource({"'', 0", "3, 3"})
    void alreadyDoneIsAboutTheFirstPress(String minutesAgo, long before, @TempDir Path folder) {
        try (ExampleSalon opened = ExampleSalon.open(folder)) {
            RunningSalon salon = opened.salon();
            String visit = "/visits/" + earlier(opened, "/visits", 60);
            String bowl = earlier(opened, "/bowls", 30) + "";
            String now = given(salon.request()).get("/api/floor").path("now");
            Instant pressed = Instant.parse(now).truncatedTo(ChronoUnit.MILLIS).minus(Duration.ofMinutes(10));
            Map<String, String> plan = new TreeMap<>(
                    Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp", "minutesAgo", minutesAgo));
            String path = visit + "/put-on";
            plan.put("press", UUID.randomUUID().toString());
            plan.put("age", "600000");
            Response refused = post(salon, path, plan, Map.of("Rinsebell-Again", "true"));
            // However old it is by the time it is sent again, it is the same press.
            plan.put("age", "601000");
            assertThat(post(salon, path, plan, Map.of("Rinsebell-Again", "true"))
                            .statusCode())
                    .isEqualTo(409);
            assertThat(post(salon, path, second(refused, path)).statusCode()).isEqualTo(303);
            String on = given(salon.request()).get("/api" + visit).path("applications[0].firstOn");
            // Between the question what time it is and the press some time passes.
            assertThat(Instant.parse(on).plus(Duration.ofMinutes(before))).isBetween(pressed, pressed.plusSeconds(60));
        }
    }

    /** Makes another one of an example, so many minutes ago. */
    private static long earlier(ExampleSalon opened, String path, int minutesAgo) {
        ObjectNode body =
                opened.examples().body(path).put("minutesAgo", minutesAgo).put("intent", "fact");
        return PressExamples.read(opened.sender().json(path, body).asString())
                .path("facts")
                .path(0)
                .asLong();
    }

    private static Map<String, String> hidden(String form) {
        return HIDDEN.matcher(form)
                .results()
                .collect(Collectors.toMap(
                        found -> found.group(1),
                        found -> BadFieldsTest.unescaped(found.group(2)),
                        (one, other) -> one,
                        TreeMap::new));
    }

    private static Response post(RunningSalon salon, String path, Map<String, String> fields) {
        return post(salon, path, fields, Map.of());
    }

    private static Response post(
            RunningSalon salon, String path, Map<String, String> fields, Map<String, String> headers) {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining(
                        "&", fields.containsKey("press") ? "" : "press=" + UUID.randomUUID() + "&", ""));
        return given(salon.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon.url())
                .headers(headers)
                .redirects()
                .follow(false)
                .body(body)
                .post(path);
    }
}
