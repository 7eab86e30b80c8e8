package rinsebell.demo.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Days that are always the same, and some that are not; {@code -Drinsebell.seed=} lives any of them again. */
class FaultyDaysTest {
    private static final long FIXED = 20;
    private static final long FRESH = 10;

    @BeforeAll
    static void nobodyReadsOfFaults() {
        Silence.fall();
    }

    @Test
    void everyRuleHolds() {
        var tally = new Tally();
        var asked = Long.getLong("rinsebell.seed");
        (asked == null ? seeds() : LongStream.of(asked)).forEach(seed -> live(seed, tally));
        assertThat(tally.bells()).isGreaterThan(100);
        assertThat(tally.faults()).isGreaterThan(20);
    }

    private static LongStream seeds() {
        return LongStream.concat(LongStream.rangeClosed(1, FIXED), new Random().longs(FRESH));
    }

    private static void live(long seed, Tally tally) {
        try {
            tally.add(Day.live(seed, Parts.HONEST));
        } catch (AssertionError | RuntimeException broken) {
            throw new AssertionError("live it again: -Drinsebell.seed=" + seed + ": " + broken.getMessage(), broken);
        }
    }
}
