package rinsebell.demo.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Some days that are always the same; {@code -Drinsebell.seed=} lives any other. */
class FaultyDaysTest {
    private static final long FIXED = 20;

    @BeforeAll
    static void nobodyReadsOfFaults() {
        Silence.fall();
    }

    @Test
    void everyRuleHolds() {
        var tally = new Tally();
        var asked = Long.getLong("rinsebell.seed");
        (asked == null ? LongStream.rangeClosed(1, FIXED) : LongStream.of(asked)).forEach(seed -> live(seed, tally));
        assertThat(tally.bells()).isGreaterThan(100);
        assertThat(tally.faults()).isGreaterThan(20);
    }

    private static void live(long seed, Tally tally) {
        try {
            tally.add(Day.live(seed, Parts.HONEST));
        } catch (AssertionError | RuntimeException broken) {
            throw new AssertionError("live it again: -Drinsebell.seed=" + seed + ": " + broken.getMessage(), broken);
        }
    }
}
