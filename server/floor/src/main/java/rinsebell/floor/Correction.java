package rinsebell.floor;

import java.time.Instant;
import java.util.Set;

/** A fact about another fact of the same stream. */
public sealed interface Correction extends Event {
    /** The number of the fact that is corrected. */
    long of();

    @Override
    default Set<Long> hangsOn() {
        return Set.of(of());
    }

    /** It did not happen. */
    record Withdrawn(long of) implements Correction {}

    /**
     * It happened at another time.
     *
     * @param to when it really happened
     */
    record SetBack(long of, Instant to) implements Correction {}
}
