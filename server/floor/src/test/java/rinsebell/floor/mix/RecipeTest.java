package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

class RecipeTest {
    private static Recipe recipe(String parts) {
        var shares = new ArrayList<Recipe.Share>();
        for (var part : parts.split(" ")) {
            shares.add(new Recipe.Share(new ProductId(shares.size() + 1L), Fraction.of(new BigDecimal(part))));
        }
        return new Recipe(shares);
    }

    private static List<Fraction> exact(String grams) {
        return Arrays.stream(grams.split(" "))
                .map(BigDecimal::new)
                .map(Fraction::of)
                .toList();
    }

    /** The ratios: common practice, no source. The rest is arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "60 60, -1, 90, 45 45",
        "60 60 7, -1, 127, 60 60 7",
        "60 60 7, 0, 30, 30 30 3.5",
        "60 60 7, 2, 14, 120 120 14",
        "60 15 60, 1, 5, 20 5 20",
        "60 7 45, 2, 90, 120 14 90",
        "1 2, 1, 0.1, 0.05 0.1"
    })
    void oneNumberGivesAllOthers(String parts, int portion, String known, String grams) {
        var said =
                portion < 0 ? new Recipe.Whole(Grams.of(known)) : new Recipe.Weight(Set.of(portion), Grams.of(known));
        var targets = recipe(parts).targets(said);
        assertThat(targets).extracting(Target::grams).isEqualTo(exact(grams));
        for (var i = 0; i < targets.size(); i++) {
            assertThat(targets.get(i).stands()).isEqualTo(i == portion);
        }
    }

    /** A third of a bowl has no decimal that ends, and is a third all the same. */
    @Test
    void thirdsAreExact() {
        var targets = recipe("1 2").targets(new Recipe.Whole(Grams.of(100)));
        assertThat(targets.get(0).grams().times(Fraction.of(3))).isEqualTo(Fraction.of(100));
        assertThat(targets.get(0).grams().rounded(2)).isEqualByComparingTo("33.33");
    }

    /** Of 180 g the first should be 60 and is 45: a quarter too little; 75 for 60 is a quarter too much. */
    @Test
    void saysHowFarTheSharesOfABowlAreOff() {
        var grams = Stream.of("45", "60", "75").map(Grams::of).toList();
        var quarter = Fraction.ONE.dividedBy(Fraction.of(4));
        assertThat(recipe("60 60 60").errors(grams))
                .containsExactly(Fraction.ZERO.minus(quarter), Fraction.ZERO, quarter);
    }

    @Test
    void noPartsAreNoPortion() {
        assertThatIllegalArgumentException().isThrownBy(() -> recipe("60 0"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Recipe(List.of()));
    }
}
