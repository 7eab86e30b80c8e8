package rinsebell.floor.basin;

import java.time.Instant;
import rinsebell.floor.visit.VisitId;

/**
 * A head's turn at a basin.
 *
 * @param visit whose
 * @param anchor the number of the fact that put the first of it on
 * @param knownSince when the last fact that it depends on happened
 * @param earliest when it may be rinsed at the earliest: ready-from, where the directions say one
 * @param startBy when water must be on at the latest, so that every head can still have a basin in time
 * @param rinseBy when water must be on by its own directions
 */
public record Turn(VisitId visit, long anchor, Instant knownSince, Instant earliest, Instant startBy, Instant rinseBy) {
    /** No basin can be kept free for it between its earliest and latest instant. */
    public boolean isClash() {
        return startBy.isBefore(earliest);
    }

    /** It has to go earlier than it would have to on its own, to leave a basin for the others. */
    public boolean isBroughtForward() {
        return startBy.isBefore(rinseBy);
    }
}
