package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.product.Contents;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

class BlendTest {
    /**
     * The first: alligation tutorial, bigbuddysociety.net/essays/tutorial-on-alligation (60 mL of 12 % from 30 % and
     * water: 24 and 36). The second: answer 929842 on wyzant.com (20 mL of 70 % from 100 % and 50 %: 8 and 12). The third:
     * pharmacy-tech-study.com/pharmacy-math-alligation.html (1000 mL of 25 % from 70 % and none), whose own answer of 360
     * comes of rounding 5/14 to 0.36; exact is 357.14. Then parts high to low of peroxide, derived: 12 to 6 with water 1:1,
     * 12 to 3 with water 1:3, 12 and 3 to 6 1:2, 9 and 3 to 6 1:1, 12 and 6 to 9 1:1.
     */
    @ParameterizedTest
    @CsvSource({
        "30, 0, 12, 60, 24, 36",
        "100, 50, 70, 20, 8, 12",
        "70, 0, 25, 1000, 357.14, 642.86",
        "12, 0, 6, 2, 1, 1",
        "12, 0, 3, 4, 1, 3",
        "12, 3, 6, 3, 1, 2",
        "9, 3, 6, 2, 1, 1",
        "12, 6, 9, 2, 1, 1",
        "6, 12, 9, 2, 1, 1",
        "3, 12, 6, 3, 2, 1"
    })
    void takesAsMuchOfEach(String one, String other, String wanted, String total, String ofOne, String ofOther) {
        var blend = (Blend.Mixed) Blend.of(Percent.of(one), Percent.of(other), Percent.of(wanted));
        var whole = Fraction.of(new BigDecimal(total));
        assertThat(blend.ofOne().times(whole).rounded(2)).isEqualByComparingTo(ofOne);
        assertThat(blend.ofOther().times(whole).rounded(2)).isEqualByComparingTo(ofOther);
    }

    @ParameterizedTest
    @CsvSource({"12, 6, 12, 1", "12, 6, 6, 0", "6, 12, 12, 0", "6, 6, 6, 1"})
    void nothingOfTheOtherIsNeeded(String one, String other, String wanted, long ofOne) {
        assertThat(Blend.of(Percent.of(one), Percent.of(other), Percent.of(wanted)))
                .isEqualTo(new Blend.Mixed(Fraction.of(ofOne)));
    }

    @ParameterizedTest
    @CsvSource({
        "12, 6, 5.99, false",
        "12, 6, 6, true",
        "12, 6, 12, true",
        "12, 6, 12.01, false",
        "6, 6, 5.99, false",
        "6, 6, 6.01, false",
        "3, 0, 0, true"
    })
    void nothingOutsideCanBeHad(String one, String other, String wanted, boolean isWithin) {
        var blend = Blend.of(Percent.of(one), Percent.of(other), Percent.of(wanted));
        assertThat(blend instanceof Blend.Mixed).isEqualTo(isWithin);
    }

    /** Derived: 20 g of 12 % and 40 g of 3 % are 60 g of 6 %. What the parts come to is what was wanted. */
    @Test
    void comesToWhatWasWanted() {
        var blend = (Blend.Mixed) Blend.of(Percent.of("12"), Percent.of("3"), Percent.of("6"));
        var whole = Fraction.of(60);
        var mixed = new Composition(List.of(
                part("12", blend.ofOne().times(whole)),
                part("3", blend.ofOther().times(whole))));
        assertThat(mixed.peroxide()).contains(Fraction.of(6));
    }

    private static Composition.Part part(String peroxide, Fraction grams) {
        var contents = new Contents(false, Percent.of(peroxide), null);
        return new Composition.Part(contents, new Grams(grams.rounded(2)));
    }
}
