package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

class RoundingTest {
    private static final long SEED = Long.getLong("rinsebell.seed", 20261130);
    private static final int RECIPES = Integer.getInteger("rinsebell.recipes", 2_000);
    private static final List<Grams> STEPS = List.of(Grams.of("0.1"), Grams.of("0.5"), Grams.of(1));

    private static Target target(String text) {
        var stands = text.endsWith("!");
        return new Target(Fraction.of(new BigDecimal(stands ? text.substring(0, text.length() - 1) : text)), stands);
    }

    private static Rounded rounded(String wanted, String step) {
        var targets = Arrays.stream(wanted.split(" ")).map(RoundingTest::target).toList();
        return Rounding.toStep(targets, Grams.of(step));
    }

    /** Reckoned by hand; an exclamation mark: what stands. */
    @ParameterizedTest
    @CsvSource({
        "'60 60 7', 1, '60 60 7'",
        "'30.4 30.4', 1, '30 30'",
        "'30.5 30.5', 1, '30 30'",
        "'30.5 61', 1, '31 61'",
        "'0.2 60', 1, '1 60'",
        "'1.4 1.4 1.4', 1, '1 1 1'",
        "'37.3! 37.3', 0.5, '37.3! 37.5'",
        "'60 0.04', 0.1, '60 0.1'",
        "'60.04 60.04', 0.1, '60 60'",
        "'33.3 66.6', 0.5, '33.5 67'"
    })
    void goesToTheScalesSteps(String wanted, String step, String shown) {
        var expected = Arrays.stream(shown.split(" "))
                .map(RoundingTest::target)
                .map(Target::grams)
                .toList();
        assertThat(rounded(wanted, step).grams()).isEqualTo(expected);
    }

    /** Of 4 the 1 is an eighth less than two sevenths, and the 3 a twentieth more than five sevenths. */
    @Test
    void saysHowFarAShareIsOff() {
        var rounded = rounded("1! 2.5", "1");
        assertThat(rounded.grams()).containsExactly(Fraction.of(1), Fraction.of(3));
        assertThat(rounded.largestError()).isEqualTo(Fraction.of(1).dividedBy(Fraction.of(8)));
        assertThat(rounded.errors()).isEqualTo(Fraction.of(7).dividedBy(Fraction.of(40)));
    }

    /** Every way of going up or down is tried, as the rule is written down. */
    @Test
    void noOtherWayIsBetter() {
        var dice = new Random(SEED);
        for (var i = 0; i < RECIPES; i++) {
            var wanted = wanted(dice);
            var step = STEPS.get(dice.nextInt(STEPS.size()));
            var found = Rounding.toStep(wanted, step);
            var best = best(wanted, Fraction.of(step.amount()));
            assertThat(List.of(found.largestError(), found.errors()))
                    .as("recipe %s of seed %s: %s to %s", i, SEED, wanted, step)
                    .isEqualTo(best);
        }
    }

    /** With directions that say how much of the last there may be for the first: the best of the ways that keep to it. */
    @Test
    void noOtherWayThatFitsIsBetter() {
        var dice = new Random(SEED);
        var kept = 0;
        for (var i = 0; i < RECIPES; i++) {
            var wanted = wanted(dice);
            var last = wanted.size() - 1;
            var limit = wanted.get(last).grams().dividedBy(wanted.get(0).grams());
            Predicate<List<Fraction>> fits = grams -> grams.get(last).compareTo(limit.times(grams.get(0))) <= 0;
            var step = STEPS.get(dice.nextInt(STEPS.size()));
            var found = Rounding.toStep(wanted, step, fits);
            var best = best(wanted, Fraction.of(step.amount()), fits);
            kept += best.isPresent() ? 1 : 0;
            assertThat(List.of(found.largestError(), found.errors()))
                    .as("recipe %s of seed %s: %s to %s", i, SEED, wanted, step)
                    .isEqualTo(best.orElseGet(() -> best(wanted, Fraction.of(step.amount()))));
        }
        assertThat(kept).as("where any way keeps to it").isBetween(RECIPES / 2, RECIPES - 1);
    }

    private static List<Target> wanted(Random dice) {
        var portions = 1 + dice.nextInt(8);
        var wanted = new ArrayList<Target>();
        for (var i = 0; i < portions; i++) {
            var hundredths = 1 + dice.nextInt(dice.nextBoolean() ? 300 : 12_000);
            var grams = Fraction.of(hundredths).dividedBy(Fraction.of(dice.nextInt(4) == 0 ? 300 : 100));
            wanted.add(new Target(grams, dice.nextInt(6) == 0));
        }
        return wanted;
    }

    private static List<Fraction> best(List<Target> wanted, Fraction step) {
        return best(wanted, step, any -> true).orElseThrow();
    }

    private static Optional<List<Fraction>> best(List<Target> wanted, Fraction step, Predicate<List<Fraction>> fits) {
        var ways = wanted.stream().map(one -> ways(one, step)).toList();
        return all(ways, 0).stream()
                .filter(fits)
                .map(grams -> errors(wanted, grams))
                .min(Comparator.comparing((List<Fraction> one) -> one.get(0)).thenComparing(one -> one.get(1)));
    }

    private static List<Fraction> ways(Target one, Fraction step) {
        if (one.stands()) {
            return List.of(one.grams());
        }
        var below = Fraction.of(one.grams().dividedBy(step).floor().longValueExact())
                .times(step);
        if (below.equals(one.grams())) {
            return List.of(below);
        }
        return below.signum() == 0 ? List.of(step) : List.of(below, below.plus(step));
    }

    private static List<List<Fraction>> all(List<List<Fraction>> ways, int from) {
        if (from == ways.size()) {
            return List.of(List.of());
        }
        var found = new ArrayList<List<Fraction>>();
        for (var rest : all(ways, from + 1)) {
            for (var first : ways.get(from)) {
                var whole = new ArrayList<>(List.of(first));
                whole.addAll(rest);
                found.add(whole);
            }
        }
        return found;
    }

    /** The largest and the sum. */
    private static List<Fraction> errors(List<Target> wanted, List<Fraction> grams) {
        var whole = wanted.stream().map(Target::grams).reduce(Fraction.ZERO, Fraction::plus);
        var total = grams.stream().reduce(Fraction.ZERO, Fraction::plus);
        var largest = Optional.<Fraction>empty();
        var sum = Fraction.ZERO;
        for (var i = 0; i < grams.size(); i++) {
            // |r W / (R w) - 1| = |r W - R w| / (R w)
            var right = total.times(wanted.get(i).grams());
            var error = grams.get(i).times(whole).minus(right).abs().dividedBy(right);
            largest = Optional.of(
                    largest.filter(more -> more.compareTo(error) >= 0).orElse(error));
            sum = sum.plus(error);
        }
        return List.of(largest.orElseThrow(), sum);
    }
}
