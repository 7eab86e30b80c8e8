package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

class PouringTest {
    private static final int BOWLS = Integer.getInteger("rinsebell.bowls", 1_000);

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

    /**
     * One portion too heavy, anywhere; then everything is poured just as the page says. Each of the others is asked for at
     * most once more: what is only rounded up never makes the bowl larger. Seeded.
     */
    @Test
    void whoPoursAsIsSaidIsNotSentBack() {
        var dice = new Random(20261130);
        for (var bowl = 0; bowl < BOWLS; bowl++) {
            var wanted = Stream.generate(() -> Target.of(new Fraction(
                            BigInteger.valueOf(30 + dice.nextInt(900)), BigInteger.valueOf(10 + dice.nextInt(4)))))
                    .limit(2 + dice.nextInt(4))
                    .toList();
            var step = List.of(Grams.of("0.1"), Grams.of("0.5"), Grams.of(1)).get(dice.nextInt(3));
            assertThat(poursAfter(wanted, step, dice))
                    .as("%s by %s", wanted, step)
                    .isLessThan(wanted.size());
        }
    }

    private static int poursAfter(List<Target> wanted, Grams step, Random dice) {
        var lies = new ArrayList<Optional<Grams>>(Collections.nCopies(wanted.size(), Optional.empty()));
        var heavy = dice.nextInt(wanted.size());
        for (var i = 0; i <= heavy; i++) {
            lies.set(i, Optional.of(planned(wanted, step, lies, i)));
        }
        var excess = step.amount().multiply(BigDecimal.valueOf(1 + dice.nextInt(12)));
        lies.set(heavy, lies.get(heavy).map(one -> new Grams(one.amount().add(excess))));
        var pours = 0;
        for (var next = shortOf(wanted, step, lies); next >= 0; next = shortOf(wanted, step, lies)) {
            lies.set(next, Optional.of(planned(wanted, step, lies, next)));
            pours++;
        }
        return pours;
    }

    /** The first portion of which less lies there than is planned; -1 for none. */
    private static int shortOf(List<Target> wanted, Grams step, List<Optional<Grams>> lies) {
        return IntStream.range(0, wanted.size())
                .filter(i ->
                        planned(wanted, step, lies, i).compareTo(lies.get(i).orElse(Grams.NONE)) > 0)
                .findFirst()
                .orElse(-1);
    }

    private static Grams planned(List<Target> wanted, Grams step, List<Optional<Grams>> lies, int i) {
        return new Grams(
                new Pouring(wanted, step, lies).plan(any -> true).grams().get(i).rounded(4));
    }
}
