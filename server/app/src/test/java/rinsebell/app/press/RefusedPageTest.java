package rinsebell.app.press;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.hasItem;

import io.restassured.response.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
            assertThat(refused.statusCode()).isEqualTo(409);
            String form = refused.asString();
            form = form.substring(form.indexOf("action=\"" + path + "\""));
            Map<String, String> hidden = hidden(form.substring(0, form.indexOf("</form>")));
            hidden.remove("press");
            Map<String, String> fact = new TreeMap<>(plan);
            fact.put("intent", "fact");
            assertThat(hidden).containsExactlyInAnyOrderEntriesOf(fact);
            assertThat(post(salon, path, hidden).statusCode()).isEqualTo(303);
            given(salon.request()).get("/api/bells").then().body("kind", hasItem("forbidden-zone"));
        }
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
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&", "press=" + UUID.randomUUID() + "&", ""));
        return given(salon.request())
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", salon.url())
                .redirects()
                .follow(false)
                .body(body)
                .post(path);
    }
}
