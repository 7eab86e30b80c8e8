package rinsebell.floor;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A fact that is about to be: it has no number yet.
 *
 * @param stream what it belongs to
 * @param happened when it happened
 * @param event what happened
 * @param text its erasable text; null for none
 */
public record Draft(
        Stream stream,
        Instant happened,
        Event event,
        @Nullable String text) {
    public Draft(Stream stream, Instant happened, Event event) {
        this(stream, happened, event, null);
    }

    /** This draft as the fact of that number. */
    public Fact numbered(long seq, Asked asked) {
        return new Fact(seq, stream, happened, asked.now(), asked.by(), event, asked.isUnsure(happened));
    }
}
