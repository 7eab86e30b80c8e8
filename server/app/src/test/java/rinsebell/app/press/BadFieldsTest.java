package rinsebell.app.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every field of every press, filled with everything that nobody should send: from programs and from pages. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadFieldsTest {

    private @Nullable ExampleSalon opened;

    @BeforeAll
    void open(@TempDir Path folder) {
        opened = ExampleSalon.open(folder);
    }

    @AfterAll
    void close() {
        salon().close();
    }

    static Stream<DescribedPress> presses() {
        return DescribedPress.all();
    }

    /**
     * One field at a time; everything beside it is right. Neighbouring fields take turns with the values, for all
     * together would take a minute; with all fields at once every value meets every field.
     */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("presses")
    void aBadFieldIsNamedToPrograms(DescribedPress press) {
        int turn = 0;
        for (DescribedField field : press.checkedFields()) {
            turn++;
            for (Hostile hostile : Hostile.eachThird(turn)) {
                Reply answer = salon().sender().json(salon().page(press), body(press, field.name(), hostile.tree()));
                assertProgramLike(answer, press.path() + " " + field + " = " + hostile);
                if (hostile.isWrongIn(field)) {
                    assertThat(wrongFields(answer))
                            .as("%s %s = %s: %s", press.path(), field, hostile, answer.asString())
                            .anyMatch(wrong -> wrong.equals(field.name()) || wrong.startsWith(field.name() + "."));
                }
            }
        }
    }

    /** All fields at once: all of them are named at once. */
    @ParameterizedTest
    @MethodSource("presses")
    void allBadFieldsAreNamedAtOnce(DescribedPress press) {
        for (Hostile hostile : Hostile.all()) {
            List<DescribedField> filled = filled(press, hostile);
            ObjectNode body = body(press, filled, hostile.tree());
            Set<String> wrong = filled.stream()
                    .filter(hostile::isWrongEverywhere)
                    .map(DescribedField::name)
                    .collect(Collectors.toCollection(TreeSet::new));
            Reply answer = salon().sender().json(salon().page(press), body);
            assertProgramLike(answer, press.path() + " all = " + hostile);
            List<String> named = wrong.isEmpty() ? List.of() : wrongFields(answer);
            wrong.removeIf(
                    field -> named.stream().anyMatch(name -> name.equals(field) || name.startsWith(field + ".")));
            assertThat(wrong)
                    .as("%s = %s: %s", press.path(), hostile, answer.asString())
                    .isEmpty();
        }
    }

    /** The form comes back as it was typed, and nothing that was typed becomes a piece of the page. */
    @ParameterizedTest
    @MethodSource("presses")
    void aFormComesBackAsItWasTyped(DescribedPress press) {
        for (Hostile hostile : Hostile.all()) {
            Optional<String> typed = hostile.typed();
            if (typed.isEmpty()) {
                continue;
            }
            ObjectNode body = body(press, filled(press, hostile), TextNode.valueOf(typed.get()));
            Reply answer = salon().sender().form(salon().page(press), body);
            assertPageLike(answer, press.path() + " all = " + hostile);
            if (filled(press, hostile).stream().anyMatch(hostile::isWrongEverywhere)) {
                assertThat(answer.statusCode())
                        .as("%s = %s", press.path(), hostile)
                        .isEqualTo(422);
            }
            if (answer.statusCode() == 422) {
                assertKept(filled(press, hostile), answer.asString(), typed.get());
            }
        }
    }

    private static void assertProgramLike(Reply answer, String what) {
        String type = Objects.requireNonNullElse(answer.contentType(), "");
        assertThat(answer.statusCode()).as("%s: %s", what, answer.asString()).isIn(201, 204, 400, 404, 409, 422);
        if (answer.statusCode() == 201) {
            assertThat(type).as(what).startsWith("application/json");
        } else if (answer.statusCode() != 204) {
            assertProblem(answer, type, what);
        }
    }

    private static void assertProblem(Reply answer, String type, String what) {
        assertThat(type).as(what).startsWith("application/problem+json");
        JsonNode problem = PressExamples.read(answer.asString());
        assertThat(problem.path("code").asText()).as(what).isNotEmpty();
        assertThat(problem.path("status").asInt()).as(what).isEqualTo(answer.statusCode());
    }

    private static List<String> wrongFields(Reply answer) {
        JsonNode problem = PressExamples.read(answer.asString());
        return problem.path("errors")
                .valueStream()
                .map(error -> error.path("field").asText())
                .toList();
    }

    private static void assertPageLike(Reply answer, String what) {
        assertThat(answer.statusCode()).as("%s: %s", what, answer.asString()).isIn(200, 303, 404, 409, 422);
        assertThat(answer.asString()).as(what).doesNotContain("<script>alert");
        if (answer.statusCode() != 303) {
            assertThat(answer.contentType()).as(what).startsWith("text/html");
        }
    }

    private static final Pattern INPUT = Pattern.compile("<input(?:[^\">]|\"[^\"]*\")*>");
    private static final Pattern NAME = Pattern.compile("\\sname=\"([^\"]*)\"");
    private static final Pattern TYPE = Pattern.compile("\\stype=\"([^\"]*)\"");
    private static final Pattern VALUE = Pattern.compile("\\svalue=\"([^\"]*)\"");

    private static void assertKept(List<DescribedField> filled, String page, String typed) {
        Set<String> names = filled.stream().map(DescribedField::name).collect(Collectors.toSet());
        INPUT.matcher(page)
                .results()
                .map(input -> input.group())
                .filter(input -> isTypedInto(input, names))
                .forEach(input -> assertThat(
                                unescaped(first(VALUE, input).orElse("")).strip())
                        .as(input)
                        .isEqualTo(typed.strip()));
    }

    private static boolean isTypedInto(String input, Set<String> names) {
        String type = first(TYPE, input).orElse("text");
        return !Set.of("hidden", "radio", "checkbox").contains(type)
                && first(NAME, input).filter(names::contains).isPresent();
    }

    private static Optional<String> first(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(found -> found.group(1)).findFirst();
    }

    static String unescaped(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    /** All of them, but for what is so long that all together would not come in through the door. */
    private static List<DescribedField> filled(DescribedPress press, Hostile hostile) {
        return press.fields().stream()
                .limit(hostile.json().length() > 1_000 ? 6 : 100)
                .toList();
    }

    private ObjectNode body(DescribedPress press, List<DescribedField> filled, JsonNode value) {
        ObjectNode body = salon().examples().body(press.path());
        for (DescribedField field : filled) {
            body = PressExamples.with(body, field.name(), value);
        }
        return body;
    }

    private ObjectNode body(DescribedPress press, String field, JsonNode value) {
        return PressExamples.with(salon().examples().body(press.path()), field, value);
    }

    private ExampleSalon salon() {
        return Objects.requireNonNull(opened);
    }
}
