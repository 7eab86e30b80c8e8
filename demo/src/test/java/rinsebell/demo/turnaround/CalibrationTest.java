package rinsebell.demo.turnaround;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.floor.report.Quantile;

/** What the README says of chairs that come free, in the same salons. */
@Tag("long")
class CalibrationTest {
    private static final double MINUTE = 60;

    private static Calibration calibration = new Calibration(List.of(), List.of());

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

    /** With as many basins as chairs nobody would wait for longer than until the next whole minute. */
    @Test
    void headsHaveToWaitForABasin() {
        var waited = calibration.learned().stream()
                .mapToDouble(promise -> promise.waited().toSeconds())
                .toArray();
        assertThat(Quantile.of(waited, 0.9)).isGreaterThan(MINUTE);
    }

    /** The picture in the README is what the command writes. */
    @Test
    void thePictureIsOfTheseChairs() throws IOException {
        assertThat(Files.readString(Path.of("plots", "chairs.svg"))).isEqualTo(Plot.of(calibration));
    }

    @Test
    void aChairThatIsFreeAtTheInstantIsFreeByThen() {
        var said = Instant.parse("2026-11-02T12:00:00Z");
        var all = Collections.nCopies(Promise.PARTS.size(), said);
        assertThat(new Promise(all, said, Duration.ZERO).isKept(90)).isTrue();
        assertThat(new Promise(all, said.plusMillis(1), Duration.ZERO).isKept(90))
                .isFalse();
    }
}
