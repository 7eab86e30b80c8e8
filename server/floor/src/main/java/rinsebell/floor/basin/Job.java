package rinsebell.floor.basin;

import java.time.Instant;
import rinsebell.floor.visit.VisitId;

/**
 * One coming stay of a head at a basin.
 *
 * @param visit whose
 * @param anchor the number of the fact that put the first of it on: what makes it the same job
 * @param knownSince when the last fact that it depends on by itself happened
 * @param earliest when water may be on at the earliest
 * @param wanted when it had best be on; never before {@code earliest} nor after {@code latest}
 * @param latest when water must be on by its own directions: reached is in time, a millisecond after is not
 * @param harm what a late rinse would do
 * @param work what the stay asks for
 */
public record Job(
        VisitId visit,
        long anchor,
        Instant knownSince,
        Instant earliest,
        Instant wanted,
        Instant latest,
        Harm harm,
        Work work) {
    /** What a late rinse does. */
    public enum Harm {
        /** It misses the result. */
        RESULT(1),
        /** It hurts hair or skin. */
        HAIR(3),
        /** It burns now: nobody goes before it, whatever was pinned. */
        NOW(1_000);

        private final int weight;

        Harm(int weight) {
            this.weight = weight;
        }

        /** How much a late minute of it counts against a late minute of another head. House numbers. */
        public int weight() {
            return weight;
        }
    }

    public Job {
        if (wanted.isBefore(earliest) || (latest.isAfter(earliest) && wanted.isAfter(latest))) {
            throw new IllegalArgumentException(
                    "wanted at " + wanted + ", which is not between " + earliest + " and " + latest);
        }
    }

    /** Whether it goes before every other head. */
    public boolean isAtOnce() {
        return harm == Harm.NOW;
    }
}
