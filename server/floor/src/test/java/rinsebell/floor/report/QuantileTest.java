package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Type 8 of Hyndman and Fan, Am Stat 1996;50:361-365: position (n + 1/3) p + 1/3. The values are those of R's
 * {@code quantile(x, p, type = 8)}; the twelve are the sample of NIST's handbook, 7.2.6.2 (from memory).
 */
class QuantileTest {
    private static final double[] FIVE = {15, 20, 35, 40, 50};
    private static final double[] TEN = {10, 9, 8, 7, 6, 5, 4, 3, 2, 1};
    private static final double[] TWELVE = {
        95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682
    };

    @ParameterizedTest
    @CsvSource({"0.40, 27", "0.25, 18.333333", "0.75, 43.333333", "0.05, 15", "0.90, 50", "0, 15", "1, 50"})
    void ofFive(double part, double value) {
        assertThat(Quantile.of(FIVE, part)).isCloseTo(value, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0.10, 1.366667", "0.25, 2.916667", "0.90, 9.633333", "0.95, 10"})
    void ofTenInAnyOrder(double part, double value) {
        assertThat(Quantile.of(TEN, part)).isCloseTo(value, within(1e-6));
    }

    @Test
    void ofTwelve() {
        assertThat(Quantile.of(TWELVE, 0.9)).isCloseTo(95.197243, within(1e-6));
    }

    @Test
    void ofNoneThereIsNone() {
        assertThatThrownBy(() -> Quantile.of(new double[0], 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Quantile.of(FIVE, 1.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
