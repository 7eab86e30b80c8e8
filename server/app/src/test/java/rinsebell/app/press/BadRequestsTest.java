package rinsebell.app.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every press, sent in every wrong way: its id, its body, its type, its method, its address. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadRequestsTest {

    private static final int MOST = 64 * 1024;

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

    @ParameterizedTest
    @MethodSource("presses")
    void itsIdMustBeOne(DescribedPress press) {
        assertProblem(json(salon().api(press)).send(example(press)), 400, "press-id-missing");
        for (String id : List.of("1234567", "x".repeat(65), "with a space", "12345678,", "\"12345678\"", "1234567/")) {
            Reply answer = json(salon().api(press)).with("Idempotency-Key", id).send(example(press));
            assertProblem(answer, 400, "press-id-unreadable");
        }
    }

    @ParameterizedTest
    @MethodSource("presses")
    void itCountsOnceAndMeansOneThing(DescribedPress press) {
        for (String id : List.of(UUID.randomUUID().toString(), fresh("~._-"), fresh("x".repeat(28)))) {
            Reply first = pressed(press, id, example(press));
            Reply again = pressed(press, id, example(press));
            assertThat(again.statusCode()).as(first.asString()).isEqualTo(first.statusCode());
            assertThat(again.asString()).isEqualTo(first.asString());
            if (isDecided(first) && press.fields().size() > 4) {
                String other =
                        PressExamples.read(example(press)).put("minutesAgo", 3).toString();
                assertProblem(pressed(press, id, other), 422, "press-id-reused");
            }
        }
    }

    private static boolean isDecided(Reply answer) {
        return answer.statusCode() != 422 && !answer.asString().contains("clock-agrees");
    }

    @ParameterizedTest
    @MethodSource("presses")
    void itsBodyMustBeAnObject(DescribedPress press) {
        for (String body : List.of(
                "{",
                "[]",
                "\"x\"",
                "7",
                "null",
                "true",
                "{}{}",
                "{\"by\":1,\"by\":2}",
                "{\"by\":NaN}",
                "{\"by\":" + "9".repeat(10_000) + "}",
                "{'by':1}",
                "{\"by\":1,}",
                "{\"by\":\"\u0001\"}",
                "{\"a\":" + "[".repeat(5_000) + "]".repeat(5_000) + "}",
                "{\"by\":1e99999999999}",
                "\u0000")) {
            assertProblem(pressed(press, fresh(""), body), 400, "unreadable-body");
        }
        byte[] halfACharacter = "{\"by\":\"\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertProblem(json(salon().api(press)).withFreshId().send(halfACharacter), 400, "unreadable-body");
    }

    @ParameterizedTest
    @MethodSource("presses")
    void itsBodyMustBeOfItsTypeAndSize(DescribedPress press) {
        for (String type :
                List.of("text/plain", Sender.FORM_TYPE, "application/xml", "application/json; charset=utf-16")) {
            Reply answer = salon().sender()
                    .message("POST", salon().api(press))
                    .typed(type)
                    .withFreshId()
                    .send(example(press));
            assertProblem(answer, 415, "unknown-type");
        }
        for (int size : List.of(MOST + 1, 1_000_000)) {
            String body = "{\"note\":\"" + "x".repeat(size - 11) + "\"}";
            assertProblem(pressed(press, fresh(""), body), 413, "too-large");
            assertPage(form("POST", salon().page(press)).send("note=" + "x".repeat(size - 5)), 413);
        }
        Reply largest = pressed(press, fresh(""), "{\"note\":\"" + "x".repeat(MOST - 11) + "\"}");
        assertThat(largest.statusCode()).isIn(409, 422);
    }

    @ParameterizedTest
    @MethodSource("presses")
    void itsMethodMustBePost(DescribedPress press) {
        for (String method : List.of("PUT", "DELETE", "PATCH")) {
            Reply answer = salon().sender()
                    .message(method, salon().api(press))
                    .typed(Sender.JSON_TYPE)
                    .withFreshId()
                    .send(example(press));
            assertProblem(answer, 405, "wrong-method");
            assertThat(answer.header("Allow")).contains("POST");
            assertPage(form(method, salon().page(press)).send(""), 405);
        }
        // Named in a header or a field, another method stays a POST.
        Reply post = json(salon().api(press))
                .withFreshId()
                .with("X-HTTP-Method-Override", "DELETE")
                .send("{\"_method\":\"DELETE\"}");
        assertThat(post.statusCode()).as(post.asString()).isIn(409, 422);
    }

    static Stream<DescribedPress> pressesAboutSomething() {
        return DescribedPress.all().filter(press -> press.path().contains("{id}"));
    }

    @ParameterizedTest
    @MethodSource("pressesAboutSomething")
    void itMustBeAboutSomethingKnown(DescribedPress press) {
        for (String id : List.of("0", "999999999999", "000999999999999")) {
            String path = press.path().replace("{id}", id);
            assertThat(json("/api" + path).withFreshId().send(example(press)).statusCode())
                    .as(path)
                    .isIn(404, 409, 422);
            assertThat(form("POST", path).send("").statusCode()).as(path).isIn(404, 409, 422);
        }
        for (String id : List.of("x", "-1", "1.0", "1e3", "0x1", "9".repeat(19), "%201", "%D9%A3", "%F0%9F%92%87")) {
            String path = press.path().replace("{id}", id);
            assertProblem(json("/api" + path).withFreshId().send(example(press)), 404, "not-found");
            assertPage(form("POST", path).send(""), 404);
        }
    }

    /** A page may be sent anything a browser or an old bookmark makes of it. */
    @ParameterizedTest
    @MethodSource("presses")
    void aPageTakesWhateverComes(DescribedPress press) {
        for (String body : List.of(
                "",
                "&&&",
                "=",
                "a",
                "%",
                "%zz=1",
                "by=%C0%AF",
                "by=1&by=2",
                "press=x",
                "press=" + "x".repeat(500),
                "intent=plan&intent=fact",
                "note[]=1",
                "x=1&".repeat(5_000),
                "{\"a\":1}",
                "\u0000=\u0000")) {
            Reply answer = form("POST", salon().page(press)).send(body);
            assertThat(answer.statusCode()).as("%s %s", press.path(), body).isIn(200, 303, 400, 404, 409, 422);
            if (answer.statusCode() != 303) {
                assertPage(answer, answer.statusCode());
            }
        }
    }

    private static void assertProblem(Reply answer, int status, String code) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(status);
        assertThat(type(answer)).isEqualTo("application/problem+json");
        JsonNode problem = PressExamples.read(answer.asString());
        assertThat(problem.path("code").asText()).isEqualTo(code);
        assertThat(problem.path("status").asInt()).isEqualTo(status);
        assertThat(problem.path("type").asText()).isEqualTo("urn:rinsebell:problem:" + code);
        assertThat(problem.path("detail").asText()).isNotEmpty();
    }

    private static void assertPage(Reply answer, int status) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(status);
        assertThat(type(answer)).startsWith("text/html");
    }

    private static String type(Reply answer) {
        return Objects.requireNonNullElse(answer.contentType(), "");
    }

    private Reply pressed(DescribedPress press, String id, String body) {
        return json(salon().api(press)).with("Idempotency-Key", id).send(body);
    }

    private Sender.Message json(String path) {
        return salon().sender().message("POST", path).typed(Sender.JSON_TYPE);
    }

    private Sender.Message form(String method, String path) {
        return salon().sender().message(method, path).typed(Sender.FORM_TYPE).withFreshId();
    }

    private static String fresh(String end) {
        return UUID.randomUUID() + end;
    }

    private String example(DescribedPress press) {
        ObjectNode body = salon().examples().body(press.path());
        return body.toString();
    }

    private ExampleSalon salon() {
        return Objects.requireNonNull(opened);
    }
}
