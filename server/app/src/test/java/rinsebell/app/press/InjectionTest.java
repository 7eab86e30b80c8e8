package rinsebell.app.press;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RegisteredRoutes;
import rinsebell.app.press.DescribedField.Shape;

/**
 * Texts that would be more than texts, through every field that takes any, of pages and of programs; then everything is
 * opened. Sources: OWASP, "Cross Site Scripting Prevention" and "CSV Injection".
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InjectionTest {
    /** By it they are found again; in no word of ours. */
    private static final String MARK = "zq7";

    /** As long as the shortest field takes. */
    private static final List<String> TEXTS = List.of(
            "<zq7><script>zq7()//",
            "\"><zq7 onzq7=zq7>",
            "' onzq7='zq7",
            "\" onzq7=\"zq7",
            "</title><zq7>",
            "]]>--><zq7>",
            "javascript:zq7()",
            "{{zq7}}${zq7}",
            "&lt;zq7&#62;&quot;",
            "=zq7()",
            "+zq7",
            "-zq7",
            "@zq7",
            "＝zq7");

    private static final Pattern EVENT = Pattern.compile("^data: ?(.*)$", Pattern.MULTILINE);

    private static final Pattern FORMULA = Pattern.compile("^\"?([=+@\t\r＝＋－＠]|-zq7)");

    private static final Pattern NO_PAGE =
            Pattern.compile("application/((problem|schema)[+])?(json|yaml).*|text/(javascript|css|calendar|plain).*");

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self';";

    private final List<String> wrong = new ArrayList<>();
    private final Set<String> taken = new TreeSet<>();
    private int turn;
    private ExampleSalon salon;
    private Set<String> routes;

    @BeforeAll
    void open(@TempDir Path folder, @TempDir Path other) throws Exception {
        routes = RegisteredRoutes.withRoles(other).keySet();
        salon = ExampleSalon.open(folder);
    }

    @AfterAll
    void close() {
        salon.close();
    }

    @Test
    void whatPeopleTypeIsTextEverywhere() {
        // What ends something has no text of its own, and would leave the others nothing to be about.
        DescribedPress.all()
                .filter(press -> !isAnEnd(press))
                .forEach(press -> press.fields().stream()
                        .filter(field -> field.shape() == Shape.TEXT)
                        .forEach(field -> send(press, field)));
        assertThat(taken).as("fields that took such a text").hasSizeGreaterThan(15);
        Set<String> shown = new TreeSet<>();
        for (String address : addresses()) {
            Response answer =
                    given(salon.salon().request()).redirects().follow(false).get(address);
            check(address, answer.statusCode(), answer.header("Content-Type"), answer.asString());
            assertThat(answer.header("Content-Security-Policy")).as(address).startsWith(POLICY);
            if (answer.asString().contains(MARK)) {
                shown.add(address);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(shown)
                .contains(
                        "/", "/staff", "/products", "/recipes", "/api/floor", "/api/use.csv", "/feed/once?board=floor")
                .hasSizeGreaterThan(30);
    }

    private static boolean isAnEnd(DescribedPress press) {
        return Set.of("/visits/{id}/leave", "/visits/{id}/stop", "/clients/{id}/erase")
                .contains(press.path());
    }

    /** Programs and pages take turns with the texts, for they read their fields alike. */
    private void send(DescribedPress press, DescribedField field) {
        for (String text : TEXTS) {
            ObjectNode body =
                    PressExamples.with(salon.examples().body(press.path()), field.name(), TextNode.valueOf(text));
            turn++;
            Reply answer = turn % 2 == 0
                    ? salon.sender().json(salon.page(press), body)
                    : salon.sender().form(salon.page(press), body);
            if (answer.statusCode() < 400) {
                taken.add(press.path() + " " + field.name());
            }
            String what = press.path() + " " + field.name() + " = " + text;
            check(what, answer.statusCode(), answer.contentType(), answer.asString());
        }
    }

    private List<String> addresses() {
        List<String> all = new ArrayList<>(List.of(
                "/feed/once?board=floor",
                "/visits/" + MARK + "%3Czq7%3E",
                "/" + MARK + "%22%3E%3Czq7%3E",
                "/?label=%22%3E%3Czq7%3E",
                "/welcome?label=%22%3E%3Czq7%3E&place=%22%3E%3Czq7%3E",
                "/api/visits/%3Czq7%3E"));
        routes.stream()
                .filter(route -> route.startsWith("GET /"))
                .map(route -> route.substring(4))
                .filter(path -> !path.startsWith("/feed"))
                .flatMap(this::filled)
                .forEach(all::add);
        return all;
    }

    private Stream<String> filled(String path) {
        if (!path.matches(".*[{<].*")) {
            return Stream.of(path);
        }
        String resource = path.replaceFirst("^/api", "").split("/")[1];
        String name = Map.of(
                        "visits",
                        "VISIT",
                        "bowls",
                        "BOWL",
                        "facts",
                        "FACT",
                        "staff",
                        "STAFF",
                        "recipes",
                        "RECIPE",
                        "clients",
                        "CLIENT",
                        "products",
                        "PRODUCT",
                        "pins",
                        "STAFF",
                        "chairs",
                        "one")
                .getOrDefault(resource, "one");
        String one = String.valueOf(salon.examples().ids().getOrDefault(name, 1L));
        Stream<String> presses = path.contains("{press}")
                ? rinsebell.web.form.FormPages.all().names().stream()
                        .filter(press -> press.resource().equals(resource))
                        .map(press -> path.replace("{press}", press.press()))
                : Stream.of(path);
        return presses.map(each -> each.replaceAll("[{<][a-z]+[}>]", one));
    }

    private void check(String what, int status, @Nullable String type, String body) {
        if (status >= 500) {
            wrong.add(what + ": " + status);
        } else if (type == null || body.isEmpty()) {
            return;
        } else if (type.startsWith("text/html")) {
            checkMarkup(what, body);
        } else if (type.startsWith("text/event-stream")) {
            EVENT.matcher(body).results().forEach(data -> checkMarkup(what, html(data.group(1))));
        } else if (type.startsWith("text/csv")) {
            body.lines()
                    .flatMap(line -> Stream.of(line.split(",")))
                    .filter(cell -> FORMULA.matcher(cell).find())
                    .forEach(cell -> wrong.add(what + ": " + cell));
        } else if (!NO_PAGE.matcher(type).matches()) {
            wrong.add(what + ": " + type);
        }
    }

    private static String html(String json) {
        try {
            return new ObjectMapper().readTree(json).path("html").asText();
        } catch (IOException e) {
            throw new IllegalStateException(json, e);
        }
    }

    private void checkMarkup(String what, String html) {
        Markup markup = Markup.of(html);
        Stream.concat(
                        markup.names().stream().filter(name -> name.contains(MARK)),
                        markup.values().stream()
                                .filter(value -> value.strip().startsWith("javascript:zq7") && !isTyped(html, value)))
                .forEach(found -> wrong.add(what + ": " + found));
    }

    /** In a field that is shown again it is what was typed, and goes nowhere. */
    private static boolean isTyped(String html, String value) {
        return !Pattern.compile("(?i)(href|src|action|formaction|data|xlink:href)=\"" + Pattern.quote(value))
                .matcher(html)
                .find();
    }
}
