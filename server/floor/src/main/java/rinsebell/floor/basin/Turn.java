package rinsebell.floor.basin;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.VisitId;

/**
 * A head's turn at a basin.
 *
 * @param visit whose
 * @param anchor the number of the fact that put the first of it on
 * @param knownSince when the last of it was put on
 * @param earliest when it may be rinsed at the earliest: ready-from, where the directions say one
 * @param startBy when water must be on at the latest, so that every head can still have a basin in time
 * @param rinseBy when water must be on by its own directions
 * @param clashSince since when no basin can take it in time: when the last fact that this depends on happened; null where
 *     one can
 */
public record Turn(
        VisitId visit,
        long anchor,
        Instant knownSince,
        Instant earliest,
        Instant startBy,
        Instant rinseBy,
        @Nullable Instant clashSince) {
    /** No basin can take it by its rinse-by. */
    public boolean isClash() {
        return clashSince != null;
    }

    /** It has to go earlier than it would have to on its own, to leave a basin for the others. */
    public boolean isBroughtForward() {
        return startBy.isBefore(rinseBy);
    }

    Turn clashing(Instant since) {
        return new Turn(visit, anchor, knownSince, earliest, startBy, rinseBy, since);
    }

    Turn startingBy(Instant start) {
        return new Turn(visit, anchor, knownSince, earliest, start, rinseBy, clashSince);
    }
}
