package rinsebell.demo.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each planted bug is caught by the day that is kept with it, and by nothing but the bug. */
@Tag("long")
class PlantedBugsTest {
    @BeforeAll
    static void nobodyReadsOfFaults() {
        Silence.fall();
    }

    @ParameterizedTest
    @EnumSource
    void isCaughtByItsDay(Bug bug) {
        var broken = catchThrowableOfType(Broken.class, () -> Day.live(bug.seed, bug.parts));
        assertThat(broken).as("seed " + bug.seed + " shows it").isNotNull();
        assertThat(broken.rule()).isEqualTo(bug.breaks);
    }

    @Test
    void theSameDaysHoldWithoutThem() {
        var seeds = Arrays.stream(Bug.values()).map(bug -> bug.seed).collect(Collectors.toSet());
        assertThat(seeds).allSatisfy(seed -> Day.live(seed, Parts.HONEST));
    }
}
