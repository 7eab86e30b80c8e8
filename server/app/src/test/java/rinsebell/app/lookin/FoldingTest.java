package rinsebell.app.lookin;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 5545, section 3.1: lines of at most 75 octets, which a CRLF and one space cut; taken out, the line is as before. */
class FoldingTest {
    /** Letters of one, two, three and four octets, so that lines end everywhere within them. */
    @ParameterizedTest
    @ValueSource(strings = {"x", "ü", "ש", "…", "👩", "x👩", "xü…👩"})
    void linesAreAsLongAsTheyMayBeAndNoLonger(String letters) {
        for (var before = 0; before < 5; before++) {
            var whole = "N".repeat(before) + letters.repeat(100);
            var folded = Folding.folded(whole + "\r\nEND:VEVENT");
            assertThat(folded.replace("\r\n ", "")).isEqualTo(whole + "\r\nEND:VEVENT\r\n");
            var lines = List.of(folded.split("\r\n"));
            assertThat(lines).allSatisfy(line -> {
                assertThat(line.getBytes(UTF_8)).hasSizeLessThanOrEqualTo(75);
                assertThat(new String(line.getBytes(UTF_8), UTF_8)).isEqualTo(line);
            });
            // No line ends sooner than the next letter, of at most four octets, makes it.
            assertThat(lines.subList(0, lines.size() - 2))
                    .allSatisfy(line -> assertThat(line.getBytes(UTF_8)).hasSizeGreaterThan(75 - 4));
        }
    }
}
