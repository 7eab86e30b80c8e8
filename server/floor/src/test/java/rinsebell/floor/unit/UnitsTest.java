package rinsebell.floor.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {
    // The trade's convention, exact by definition. The last row is written so in Regulation (EC) No 1223/2009, Annex
    // III,
    // entry 12(a), as replaced by Regulation (EU) 2019/831: 12 % is 40 volumes.
    @ParameterizedTest
    @CsvSource({"10, 3", "20, 6", "30, 9", "40, 12"})
    void tenVolumesAreThreePercent(int volumes, String percent) {
        assertThat(Percent.ofVolumes(volumes)).isEqualTo(Percent.of(percent));
    }

    @Test
    void equalAmountsAreEqualWhateverTheirZeros() {
        assertThat(Grams.of("60.0")).isEqualTo(Grams.of(60)).hasSameHashCodeAs(Grams.of("60"));
        assertThat(Percent.of("6.00")).isEqualTo(Percent.of("6")).hasSameHashCodeAs(Percent.of("6"));
        assertThat(Grams.of("100").toString()).isEqualTo("100 g");
    }

    @Test
    void nothingIsLessThanNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> Grams.of("-0.1")).withMessageContaining("-0.1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.1", "100"})
    void aShareIsFromNoneToAll(String percent) {
        assertThat(Percent.of(percent).toString()).isEqualTo(percent + " %");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.1", "100.1"})
    void noShareIsOutside(String percent) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Percent.of(percent))
                .withMessageContaining(percent);
    }

    @Test
    void sumsAreExact() {
        assertThat(Grams.of("0.1").plus(Grams.of("0.2"))).isEqualTo(Grams.of("0.3"));
    }
}
