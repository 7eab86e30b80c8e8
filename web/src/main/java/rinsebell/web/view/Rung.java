package rinsebell.web.view;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A bell as a device rings it by itself, with the server or without.
 *
 * @param id the bell's key, safe for an element id
 * @param round the bell with which it is one to a person; its own id where it stands alone
 * @param where such as "chair 3"
 * @param counts the instant that it counts from or to
 * @param harm of bells that ring alike the one with the least goes first
 * @param spoken what a device may say aloud: nothing that is private or alarms a client
 * @param hear where the "heard" press goes; none where there is nothing to press
 * @param turns what it does, and when, if nobody does anything
 */
public record Rung(
        String id,
        String round,
        String where,
        Instant counts,
        String href,
        int harm,
        String spoken,
        @Nullable String hear,
        List<Turn> turns) {
    public Rung {
        turns = List.copyOf(turns);
    }

    /** What it does from an instant on. */
    public enum How {
        /** It is shown, and no more. */
        ASKS,
        RINGS,
        /** Somebody has seen it. */
        HEARD,
        /** Somebody has put it off. */
        SHELVED
    }

    /**
     * @param from since when
     * @param what such as "rinse now"
     * @param ears who hears it, as codes with commas between; empty while it does not ring
     */
    public record Turn(Instant from, String what, Urgency urgency, How how, String ears) {
        String text(int word) {
            return from.toEpochMilli() + ":" + urgency.css() + ":" + how.name().toLowerCase(Locale.ROOT) + ":" + word
                    + ":" + ears;
        }
    }

    /** What it says in one turn or another, each once. */
    public String wordsText() {
        return words().collect(Collectors.joining("|"));
    }

    /** The turns as the script reads them: {@code 1795271000000:medium:rings:0:staff-4,chair-3 ...}, words by number. */
    public String turnsText() {
        var words = words().toList();
        return turns.stream().map(turn -> turn.text(words.indexOf(turn.what()))).collect(Collectors.joining(" "));
    }

    private Stream<String> words() {
        return turns.stream().map(Turn::what).distinct();
    }
}
