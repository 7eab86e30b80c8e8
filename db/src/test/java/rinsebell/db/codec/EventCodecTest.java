package rinsebell.db.codec;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Event;

final class EventCodecTest {

    /** The fields of these kinds as they were first released: a line, once here, stays readable as it is. */
    private static final String CORPUS = "/rinsebell/db/codec/events-1.txt";

    @ParameterizedTest
    @MethodSource("samples")
    void whatIsWrittenIsReadBack(Event event) {
        EventKind<?> kind = EventCodec.kindOf(event);
        String body = Json.line(kind.write(event));

        assertThat(EventCodec.read(kind.name(), kind.version(), Json.parse(body)))
                .isEqualTo(event);
    }

    @Test
    void everyKindOfTheFloorIsWrittenAndHasASample() {
        List<String> floors = leaves(Event.class).map(Class::getName).toList();

        assertThat(EventCodec.KINDS.stream().map(kind -> kind.type().getName())).hasSameElementsAs(floors);
        assertThat(samples().map(event -> event.getClass().getName())).hasSameElementsAs(floors);
    }

    @ParameterizedTest
    @MethodSource("corpus")
    void whatWasReleasedIsStillRead(String line, Event event) {
        String[] parts = line.split(" ", 3);

        assertThat(EventCodec.read(parts[0], Integer.parseInt(parts[1]), Json.parse(parts[2])))
                .isEqualTo(event);
    }

    @Test
    void theCorpusHoldsEveryKind() throws IOException {
        assertThat(corpusLines()).hasSameSizeAs(EventSamples.all());
        assertThat(corpusLines().stream().map(line -> line.split(" ", 2)[0]).distinct())
                .hasSameElementsAs(
                        EventCodec.KINDS.stream().map(EventKind::name).toList());
    }

    @Test
    void anUnknownKindOrVersionIsNamed() {
        assertThatThrownBy(() -> EventCodec.read("hair-cut", 1, Json.object()))
                .isInstanceOf(UnreadableFact.class)
                .hasMessageContaining("the kind \"hair-cut\", version 1, is not known");
        assertThatThrownBy(() -> EventCodec.read("left", 2, Json.object()))
                .isInstanceOf(UnreadableFact.class)
                .hasMessageContaining("\"left\", version 2");
    }

    @ParameterizedTest
    @MethodSource("unreadable")
    void aBodyThatIsNotOfItsKindIsNamed(String kind, String body, String reason) {
        assertThatThrownBy(() -> EventCodec.read(kind, 1, Json.parse(body)))
                .isInstanceOf(UnreadableFact.class)
                .hasMessageContaining(reason);
    }

    static Stream<Arguments> unreadable() {
        return Stream.of(
                arguments("last-on", "{}", "last-on.application is missing"),
                arguments("last-on", "{\"application\":\"x\"}", "last-on.application is \"x\""),
                arguments("heat-on", "{\"heat\":\"FIRE\"}", "heat-on.heat is \"FIRE\""),
                arguments("moved", "{\"place\":{}}", "moved.place.bench is missing"),
                arguments("put-on", "[]", "not a JSON object"),
                arguments("put-on", "{", "not JSON"),
                arguments("taken-off", "{\"applications\":[],\"how\":\"RINSED\"}", "taken-off breaks a rule"),
                arguments("taken-off", "{\"applications\":[null],\"how\":\"RINSED\"}", "applications holds null"),
                arguments("clock-shifted", "{\"by\":\"soon\"}", "clock-shifted.by is \"soon\""));
    }

    static Stream<Event> samples() {
        return EventSamples.all().stream();
    }

    static Stream<Arguments> corpus() throws IOException {
        List<String> lines = corpusLines();
        List<Event> events = EventSamples.all();
        return IntStream.range(0, lines.size()).mapToObj(at -> arguments(lines.get(at), events.get(at)));
    }

    private static List<String> corpusLines() throws IOException {
        try (InputStream corpus = EventCodecTest.class.getResourceAsStream(CORPUS)) {
            return new String(Objects.requireNonNull(corpus).readAllBytes(), UTF_8)
                    .lines()
                    .toList();
        }
    }

    private static Stream<Class<?>> leaves(Class<?> type) {
        Class<?>[] permitted = type.getPermittedSubclasses();
        return permitted == null ? Stream.of(type) : Arrays.stream(permitted).flatMap(EventCodecTest::leaves);
    }
}
