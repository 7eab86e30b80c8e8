package rinsebell.demo.browser;

import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plan of all bells that lies on a page, read apart from the code that writes and follows it. */
final class BellTimes {
    private static final Pattern BELL = Pattern.compile("data-hear=\"([^\"]*)\" data-turns=\"([^\"]*)\"");

    private BellTimes() {}

    /** When each bell begins to ring, in milliseconds since 1970, by the address at which it is heard. */
    static Map<String, Long> on(String page) {
        return BELL.matcher(page)
                .results()
                .filter(bell -> turns(bell.group(2)).findAny().isPresent())
                .collect(Collectors.toMap(
                        bell -> bell.group(1),
                        bell -> turns(bell.group(2)).findFirst().orElseThrow()));
    }

    /** A turn is written as from when, how urgent, what it does, of which stage, and for whom. */
    private static Stream<Long> turns(String written) {
        return Stream.of(written.split(" ", -1))
                .map(turn -> turn.split(":", -1))
                .filter(turn -> turn[2].equals("rings"))
                .map(turn -> Long.parseLong(turn[0]));
    }
}
