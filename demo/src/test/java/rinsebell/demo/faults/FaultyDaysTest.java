package rinsebell.demo.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Some days that are always the same, and those on which a rule once did not hold; {@code -Drinsebell.seed=} lives any
 * other.
 */
class FaultyDaysTest {
    private static final long FIXED = Long.getLong("rinsebell.fixed", 5);
    private static final long[] ONCE_BROKEN = {
        78, 456, 1428, 1480, 1628, 1889, 1980, 2346, 2494, 3485, 5779, 5847, 6158, 9288, 11440, 11724, 40318, 20266284
    };

    @BeforeAll
    static void nobodyReadsOfFaults() {
        Silence.fall();
    }

    @Test
    void everyRuleHolds() {
        var tally = new Tally();
        var asked = Long.getLong("rinsebell.seed");
        (asked == null ? days() : LongStream.of(asked)).forEach(seed -> live(seed, tally));
        assertThat(tally.bells()).isGreaterThan(100);
        assertThat(tally.faults()).isGreaterThan(20);
    }

    private static LongStream days() {
        return LongStream.concat(LongStream.rangeClosed(1, FIXED), LongStream.of(ONCE_BROKEN));
    }

    private static void live(long seed, Tally tally) {
        try {
            tally.add(Day.live(seed, Parts.HONEST));
        } catch (AssertionError | RuntimeException broken) {
            throw new AssertionError("live it again: -Drinsebell.seed=" + seed + ": " + broken.getMessage(), broken);
        }
    }
}
