package rinsebell.demo.turnaround;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Collections;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the README says of chairs that come free, in the same salons. */
class CalibrationTest {
    private static Calibration calibration = new Calibration(java.util.List.of(), java.util.List.of());

    @BeforeAll
    static void lives() {
        calibration = Calibration.of(Chairs.SEED, Chairs.SALONS, Chairs.DAYS);
    }

    @Test
    void nineOfTenAreFreeByTheLatestThatWasSaid() {
        assertThat(calibration.chairs()).isGreaterThanOrEqualTo(2_000);
        assertThat(Calibration.share(calibration.learned(), 90)).isBetween(0.85, 0.95);
    }

    @Test
    void halfOfThemAreFreeByTheLikelyTime() {
        assertThat(Calibration.share(calibration.learned(), 50)).isBetween(0.4, 0.6);
    }

    /** So it is learning that makes them true, and this check can fail. */
    @Test
    void byHouseNumbersTheSameChairsAreNot() {
        assertThat(calibration.house()).hasSameSizeAs(calibration.learned());
        assertThat(Calibration.share(calibration.house(), 90)).isLessThan(0.85);
    }

    @Test
    void aChairThatIsFreeAtTheInstantIsFreeByThen() {
        var said = Instant.parse("2026-11-02T12:00:00Z");
        var all = Collections.nCopies(Promise.PARTS.size(), said);
        assertThat(new Promise(all, said).isKept(90)).isTrue();
        assertThat(new Promise(all, said.plusMillis(1)).isKept(90)).isFalse();
    }
}
