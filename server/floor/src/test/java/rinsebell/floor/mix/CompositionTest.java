package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.product.Contents;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

class CompositionTest {
    private static Contents holding(String peroxide, String ammonia) {
        return new Contents(false, Percent.of(peroxide), Percent.of(ammonia));
    }

    private static final Contents UNKNOWN = new Contents(false, null, null);

    private static Composition of(Composition.Part... parts) {
        return new Composition(Arrays.asList(parts));
    }

    private static Composition.Part g(String grams, Contents contents) {
        return new Composition.Part(contents, Grams.of(grams));
    }

    private static Fraction exact(String number) {
        return Fraction.of(new BigDecimal(number));
    }

    /**
     * Properly mixed, one to one, the mild cream carries about 1.6 % ammonia and the stronger one 3 %: common practice, no
     * source. The rest is arithmetic.
     */
    @ParameterizedTest
    @CsvSource({"3.2, 1.6", "4, 2", "6, 3", "12, 6"})
    void ammoniaReadyForUseAtOneToOne(String inTheTub, String readyForUse) {
        assertThat(of(g("60", holding("0", inTheTub)), g("60", holding("6", "0")))
                        .ammonia())
                .contains(exact(readyForUse));
    }

    /** Derived: percent times grams over the whole; 12 % of 45 g in 105 g is 36/7 %. */
    @ParameterizedTest
    @CsvSource({"60, 60, 12, 6, 1", "60, 180, 12, 9, 1", "180, 60, 12, 3, 1", "60, 45, 12, 36, 7"})
    void peroxideReadyForUse(String water, String grams, String strength, String over, String under) {
        assertThat(of(g(water, holding("0", "0")), g(grams, holding(strength, "0")))
                        .peroxide())
                .contains(exact(over).dividedBy(exact(under)));
    }

    @Test
    void whatIsNotKnownIsSaidToBeSoAndCountsAsNoneForALeast() {
        var mixture = of(g("60", UNKNOWN), g("60", holding("12", "0")));
        assertThat(mixture.peroxide()).isEmpty();
        assertThat(mixture.ammonia()).isEmpty();
        assertThat(mixture.peroxideAtLeast()).isEqualTo(Fraction.of(6));
        assertThat(mixture.ammoniaAtLeast()).isEqualTo(Fraction.ZERO);
    }

    @Test
    void nothingWeighedHasNoStrength() {
        assertThat(new Composition(List.of()).peroxide()).isEmpty();
        assertThat(of(g("0", holding("12", "0"))).peroxide()).isEmpty();
        assertThat(of(g("0", holding("12", "0"))).peroxideAtLeast()).isEqualTo(Fraction.ZERO);
    }
}
