package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What the scripts reckon from what they are given, in a real browser: one page is enough for all of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReckoningIT extends SamplePages {
    @SuppressWarnings("NullAway.Init")
    private Page page;

    @BeforeAll
    void open() {
        page = chromium.page();
        page.navigate(server.url("floor"));
    }

    @AfterAll
    void close() {
        Chromium.close(page);
    }

    private Object in(String module, String code) {
        return in(page, module, code);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/rinsebell/web/left.csv", numLinesToSkip = 1)
    void countsAsTheServerDoes(long millisLeft, String text) {
        var now = Samples.NOW.toEpochMilli();
        assertThat(in("clock.js", "return module.left(" + (now + millisLeft) + ", " + now + ");"))
                .isEqualTo(text);
    }

    /** The example streams of the HTML Living Standard, section 9.2.6, from memory; the last three are our own. */
    @ParameterizedTest
    @CsvSource({
        "'data: This is the first message.||data: This is the second message, it|data: has two lines.||', "
                + "'message:This is the first message.: message:This is the second message, it~has two lines.:'",
        "'event: add|data: 73857293||event: remove|data: 2153||', 'add:73857293: remove:2153:'",
        "'data: ABC|data: +2|data: 10||', 'message:ABC~+2~10:'",
        "': test stream||data: first event|id: 1||data:second event|id||data:  third event|', "
                + "'message:first event:1 message:second event:'",
        "'data||data|data||data:', 'message:: message:~:'",
        "'data:test||data: test||', 'message:test: message:test:'",
        "'data:  two||', 'message: two:'",
        "'id: 7|data: a||data: b||', 'message:a:7 message:b:7'",
        "'retry: 1000||other: x|data: a:b||', 'message:a:b:'"
    })
    void readsAnEventStreamAsBrowsersDo(String stream, String read) {
        for (var end : List.of("\\n", "\\r\\n", "\\r")) {
            var lines = "\"" + stream.replace("|", end) + "\"";
            assertThat(in(
                            "events.js",
                            "return module.events(" + lines
                                    + ").map((event) => [event.type, event.data, event.lastEventId].join(':')).join(' ')"
                                    + ".replaceAll('\\n', '~');"))
                    .isEqualTo(read);
        }
    }

    /** A device hears what reaches its ear, from the instant on at which it does, and the loudest first. */
    @ParameterizedTest
    @CsvSource({
        "assistants, -1000, 'bell-rinse-73-88'",
        "staff-3,    -1000, ''",
        "desk,       0,     ''",
        "desk,       11999, ''",
        "desk,       12000, 'bell-rinse-73-88'",
        "staff-3,    131999, 'bell-rinse-73-88'",
        "staff-3,    132000, 'bell-rinse-73-88 bell-strand_check-76-61'",
        "all,        0,     'bell-rinse-73-88'",
        "chair-3,    0,     ''"
    })
    void hearsWhatReachesItsEar(String ear, long millisLater, String bells) {
        var at = Samples.NOW.toEpochMilli() + millisLater;
        assertThat(in(
                        "ring.js",
                        "return module.ringing(module.bells(), '" + ear + "', " + at
                                + ").map(one => one.id).join(' ');"))
                .isEqualTo(bells);
    }
}
