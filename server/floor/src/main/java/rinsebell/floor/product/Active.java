package rinsebell.floor.product;

import java.time.Duration;

/**
 * How long a mixture is usable, counted from mixing, and what its end means.
 *
 * @param usableFor from mixing
 * @param atEnd what must be done then
 */
public record Active(Duration usableFor, AtEnd atEnd) {
    /** What the end of the usable time means. */
    public enum AtEnd {
        /** Its work is over: what is on is rinsed (lighteners). A hard limit. */
        RINSE,
        /** No more is put on; what is on goes on developing (colour). */
        PUT_NO_MORE_ON
    }

    /** The stricter of two: the shorter time; rinsing where either asks for it. */
    public Active and(Active other) {
        var shorter = usableFor.compareTo(other.usableFor) <= 0 ? usableFor : other.usableFor;
        var rinse = atEnd == AtEnd.RINSE || other.atEnd == AtEnd.RINSE;
        return new Active(shorter, rinse ? AtEnd.RINSE : AtEnd.PUT_NO_MORE_ON);
    }
}
