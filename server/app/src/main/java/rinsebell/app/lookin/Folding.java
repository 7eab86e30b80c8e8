package rinsebell.app.lookin;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/**
 * Cuts lines to at most 75 octets, never within a character (RFC 5545, section 3.1). The library that writes calendars
 * counts characters, and one of them may be four octets.
 */
final class Folding {
    private static final int MOST_OCTETS = 75;
    private static final String CUT = "\r\n ";

    private Folding() {}

    static String folded(String text) {
        return text.lines().map(Folding::line).collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String line(String whole) {
        var cut = new StringBuilder();
        var octets = 0;
        for (var at = 0; at < whole.length(); at = whole.offsetByCodePoints(at, 1)) {
            var character = Character.toString(whole.codePointAt(at));
            var size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > MOST_OCTETS) {
                cut.append(CUT);
                // The space that the next line begins with.
                octets = 1;
            }
            cut.append(character);
            octets += size;
        }
        return cut.toString();
    }
}
