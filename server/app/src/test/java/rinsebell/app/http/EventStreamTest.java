package rinsebell.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the first three vectors: WHATWG HTML, section 9.2.6, the examples after the rules. */
class EventStreamTest {

    @Test
    void linesOfDataAreJoined() {
        assertThat(data("data: YHOO\ndata: +2\ndata: 10\n\n")).containsExactly("YHOO\n+2\n10");
    }

    @Test
    void idsStayUntilTheyAreEmptied() {
        EventStream stream = new EventStream();
        stream.read(": test stream\n\ndata: first event\nid: 1\n\ndata:second event\nid\n\ndata:  third event\n");
        assertThat(stream.events()).extracting(EventStream.Event::data).containsExactly("first event", "second event");
        stream.read("\n");
        assertThat(stream.events())
                .containsExactly(
                        new EventStream.Event("message", "1", "first event"),
                        new EventStream.Event("message", "", "second event"),
                        new EventStream.Event("message", "", " third event"));
    }

    @Test
    void emptyDataIsAnEventAndAnUnfinishedOneIsNone() {
        assertThat(data("data\n\ndata\ndata\n\ndata:\n")).containsExactly("", "\n");
    }

    /** Source: web-platform-tests, eventsource/format-newlines and format-leading-space. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "data:test\n\ndata: test\n\n",
                "data:test\r\rdata: test\r\r",
                "data:test\r\n\r\ndata: test\r\n\r\n"
            })
    void everyLineEndCountsAndOneSpaceIsDropped(String text) {
        assertThat(data(text)).containsExactly("test", "test");
    }

    private static java.util.List<String> data(String text) {
        EventStream stream = new EventStream();
        stream.read(text);
        return stream.events().stream().map(EventStream.Event::data).toList();
    }
}
