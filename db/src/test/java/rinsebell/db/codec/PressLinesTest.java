package rinsebell.db.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.Stream;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;

final class PressLinesTest {

    private static final Instant TEN = Instant.parse("2026-11-28T10:00:00.123Z");
    private static final Stream VISIT = Stream.visit(new VisitId(7));

    private static final Fact ARRIVED = new Fact(
            7,
            VISIT,
            TEN.minusSeconds(60),
            TEN,
            new StaffId(3),
            new StayEvent.Arrived(Place.chair(3), null, null, null));

    private static final Fact LEFT = new Fact(8, VISIT, TEN, TEN, null, new StayEvent.Left());

    private static final Entry PRESS = new Entry(
            "press-1", "tablet 3", "ab12", "{\"said\":\"on the head\"}", List.of(ARRIVED, LEFT), Map.of(7L, "Amara"));

    @Test
    void aPressComesBackWithoutItsTexts() {
        Entry bare =
                new Entry(PRESS.id(), PRESS.device(), PRESS.payloadHash(), PRESS.outcome(), PRESS.facts(), Map.of());

        assertThat(PressLines.read(PressLines.of(PRESS))).isEqualTo(bare);
    }

    @Test
    void aJournalNeverHoldsAText() {
        assertThat(String.join("", PressLines.of(PRESS))).doesNotContain("Amara");
    }

    /** A line that was written once stays readable as it is. */
    @Test
    void aPressStandsInTheJournalAsItWasReleased() {
        List<String> released = List.of(
                "{\"seq\":7,\"stream\":\"visit 7\",\"happened_ms\":1795859940123,\"recorded_ms\":1795860000123,"
                        + "\"by\":3,\"kind\":\"arrived\",\"v\":1,\"body\":{\"place\":{\"chair\":3}},"
                        + "\"press\":{\"id\":\"press-1\",\"device\":\"tablet 3\",\"payload_hash\":\"ab12\","
                        + "\"outcome\":\"{\\\"said\\\":\\\"on the head\\\"}\"}}",
                "{\"seq\":8,\"stream\":\"visit 7\",\"happened_ms\":1795860000123,\"recorded_ms\":1795860000123,"
                        + "\"kind\":\"left\",\"v\":1,\"body\":{}}");

        assertThat(PressLines.of(PRESS)).isEqualTo(released);
        assertThat(PressLines.read(released).facts()).containsExactly(ARRIVED, LEFT);
    }

    /** The mark stands in the body; a line without one, as all were before, is of an instant that is sure. */
    @Test
    void anUnsureInstantIsMarkedInTheBody() {
        Fact unsure = new Fact(8, VISIT, TEN, TEN, null, new StayEvent.Left(), true);
        String line = "{\"seq\":8,\"stream\":\"visit 7\",\"happened_ms\":1795860000123,\"recorded_ms\":1795860000123,"
                + "\"kind\":\"left\",\"v\":1,\"body\":{\"unsure\":true},\"press\":{\"id\":\"press-2\","
                + "\"device\":\"\",\"payload_hash\":\"cd34\",\"outcome\":\"{}\"}}";
        Entry press = new Entry("press-2", "", "cd34", "{}", List.of(unsure), Map.of());

        assertThat(PressLines.of(press)).containsExactly(line);
        assertThat(PressLines.read(List.of(line)).facts()).containsExactly(unsure);
        assertThat(PressLines.read(List.of(line.replace("\"unsure\":true", ""))).facts())
                .containsExactly(LEFT);
    }

    @ParameterizedTest
    @MethodSource("streams")
    void aStreamHasAName(Stream stream, String name) {
        assertThat(StreamName.of(stream)).isEqualTo(name);
        assertThat(StreamName.parse(name)).isEqualTo(stream);
    }

    static List<Arguments> streams() {
        return List.of(
                arguments(Stream.SALON, "salon"),
                arguments(Stream.day(LocalDate.of(2026, 11, 28)), "day 2026-11-28"),
                arguments(VISIT, "visit 7"));
    }

    @Test
    void anotherNameIsNoStream() {
        for (String name : List.of("", "day", "day today", "visit seven", "week 1")) {
            assertThatThrownBy(() -> StreamName.parse(name))
                    .isInstanceOf(UnreadableFact.class)
                    .hasMessageContaining(name);
        }
    }
}
