package rinsebell.floor.salon;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import rinsebell.floor.product.Kind;

/**
 * The salon's own numbers. They may tighten directions, never loosen them.
 *
 * @param applying how long putting one bowl on takes at most
 * @param working what comes before the basin
 * @param bowl when a waiting bowl asks, and rings
 * @param checks when a late check rings
 * @param ringing how bells that nobody answers go on
 * @param skinTest when a skin test counts
 * @param longestOn a shorter longest-on by kind of product
 * @param weighingSlackGrams how far a weighed portion may miss its ratio
 * @param keeping how long what is about people is kept
 */
public record Policy(
        Duration applying,
        WorkingTime working,
        WaitingBowl bowl,
        LateCheck checks,
        Ringing ringing,
        SkinTestRule skinTest,
        Map<Kind, Duration> longestOn,
        int weighingSlackGrams,
        Keeping keeping) {
    public Policy {
        longestOn = Map.copyOf(longestOn);
    }

    /**
     * @param walk to the basin
     * @param foilsOut taking foils out, before the walk
     * @param rinsing at the basin, for one head
     * @param soon how long before the working time the coming rinse is shown
     */
    public record WorkingTime(Duration walk, Duration foilsOut, Duration rinsing, Duration soon) {
        /** What comes before the basin for a head with foils in it, or without. */
        public Duration before(boolean foils) {
            return foils ? walk.plus(foilsOut) : walk;
        }
    }

    /**
     * @param question from mixing, the quiet "is it on?"
     * @param low from mixing, a low bell
     */
    public record WaitingBowl(Duration question, Duration low) {}

    /**
     * @param medium late by this rings medium
     * @param high late by this rings high
     * @param highSooner the same with heat, or on scalp
     * @param round checks of one person within this are one round
     */
    public record LateCheck(Duration medium, Duration high, Duration highSooner, Duration round) {}

    /**
     * @param widerHigh a high bell that nobody has seen for so long calls more people, and again after as long
     * @param widerMedium the same for a medium one; a low one calls nobody further
     * @param againHigh a high bell that was seen rings again after so long, until it has really ended
     * @param againMedium the same for a medium one
     * @param againLow the same for a low one
     * @param longestShelved how long a bell may be put off at most
     */
    public record Ringing(
            Duration widerHigh,
            Duration widerMedium,
            Duration againHigh,
            Duration againMedium,
            Duration againLow,
            Duration longestShelved) {
        /** House numbers to begin with; common practice, no source. */
        public static final Ringing DEFAULT = new Ringing(
                Duration.ofSeconds(30),
                Duration.ofMinutes(2),
                Duration.ofMinutes(2),
                Duration.ofMinutes(5),
                Duration.ofMinutes(10),
                Duration.ofMinutes(5));
    }

    /**
     * @param before how long before the visit it is applied at least
     * @param validDays how many days after being applied it counts
     */
    public record SkinTestRule(Duration before, int validDays) {}

    /**
     * @param recordMonths how long a client's record is kept after the last that is known of them
     * @param textDays how long labels and notes of visits without a record are kept after their end
     * @param nameMinutes how long a shared device goes on naming somebody without a press
     */
    public record Keeping(int recordMonths, int textDays, int nameMinutes) {
        /** House numbers to begin with; common practice, no source. */
        public static final Keeping DEFAULT = new Keeping(24, 90, 15);

        /** No copy is kept longer, so that what was erased does not live for ever in one; common practice, no source. */
        public static final Duration COPIES = Duration.ofDays(14);

        /** Records of which nothing later is known are past their time. */
        public Instant recordsBefore(Instant now, ZoneId zone) {
            return now.atZone(zone).minusMonths(recordMonths).toInstant();
        }

        /** Labels and notes of visits that ended earlier are past their time. */
        public Instant textsBefore(Instant now) {
            return now.minus(Duration.ofDays(textDays));
        }
    }

    /** House numbers to begin with; common practice, no source, but for the skin test two days before (FDA). */
    public static final Policy DEFAULT = new Policy(
            Duration.ofMinutes(20),
            new WorkingTime(Duration.ofMinutes(1), Duration.ofMinutes(4), Duration.ofMinutes(8), Duration.ofMinutes(5)),
            new WaitingBowl(Duration.ofMinutes(6), Duration.ofMinutes(15)),
            new LateCheck(Duration.ofMinutes(2), Duration.ofMinutes(5), Duration.ofMinutes(2), Duration.ofMinutes(3)),
            Ringing.DEFAULT,
            new SkinTestRule(Duration.ofDays(2), 7),
            Map.of(),
            1,
            Keeping.DEFAULT);
}
