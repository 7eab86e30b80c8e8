package rinsebell.floor.product;

import java.time.Duration;

/**
 * A development time, from - to.
 *
 * @param from the earliest sensible end
 * @param to the latest end; not before {@code from}
 */
public record Span(Duration from, Duration to) {
    public Span {
        if (from.isNegative() || to.compareTo(from) < 0) {
            throw new IllegalArgumentException("a development time ends after it begins: " + from + " to " + to);
        }
    }
}
