package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

class PouringTest {
    /** 60 to 60 to 7 on a scale of whole grams; a dash: not poured yet. Reckoned by hand. */
    @ParameterizedTest
    @CsvSource({
        "'60 60 7', '- - -', '60 60 7', nothing poured yet",
        "'60 60 7', '60 - -', '60 60 7', as wanted",
        "'60 60 7', '66 - -', '66 66 8', too much: the others follow",
        "'60 60 7', '54 - -', '54 54 6', no more there: the others follow",
        "'60 60 7', '60 63 -', '63 63 7', the first is topped up",
        "'60 60 7', '60 57 -', '60 60 7', the second still wants three grams",
        "'60 60 7', '60 60 14', '120 120 14', twice as much of the last",
        "'60 60 7', '60 60 7', '60 60 7', all of it",
        "'33.3 66.6', '33 -', '33 66', what the scale can show is as wanted",
        "'33.3 66.6', '34 -', '34 68', a gram too much"
    })
    void whatWeighsMostSetsTheSize(String wanted, String poured, String plan, String why) {
        var targets = Arrays.stream(wanted.split(" "))
                .map(BigDecimal::new)
                .map(Fraction::of)
                .map(Target::of)
                .toList();
        var lies = Arrays.stream(poured.split(" "))
                .map(one -> one.equals("-") ? Optional.<Grams>empty() : Optional.of(Grams.of(one)))
                .toList();
        var expected = Arrays.stream(plan.split(" "))
                .map(BigDecimal::new)
                .map(Fraction::of)
                .toList();
        assertThat(new Pouring(targets, Grams.of(1), lies).plan(any -> true).grams())
                .as(why)
                .isEqualTo(expected);
    }
}
