package rinsebell.floor.clock;

import java.time.Instant;

/**
 * One reason why the hair must be rinsed by an instant.
 *
 * @param why which term
 * @param at the instant: reached counts as due
 * @param hard past it hair or skin is hurt; a soft one only misses the result
 */
public record Limit(Why why, Instant at, boolean hard) implements Comparable<Limit> {
    public enum Why {
        /** Burning, swelling, severe itch, or a hot foil. */
        DISCOMFORT,
        /** The last check decided to rinse. */
        DECIDED,
        /** The bowl's active life is over. */
        USABLE_END,
        DEVELOPED,
        LONGEST_ON,
        PLANNED
    }

    /** The earliest first; of two at once the hard one, then in the order of {@link Why}. */
    @Override
    public int compareTo(Limit other) {
        var byTime = at.compareTo(other.at);
        var byHardness = Boolean.compare(other.hard, hard);
        return byTime != 0 ? byTime : byHardness != 0 ? byHardness : why.compareTo(other.why);
    }
}
