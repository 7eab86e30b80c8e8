package rinsebell.floor.mix;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/**
 * Rounds weights to what the scale shows, so that the mixture stays what it should be: each portion goes to the step below
 * or above, none to nothing, and the largest relative error of any portion's share of the whole is as small as it can be;
 * of several such ways the one with the least sum of errors counts, then the one whose total is nearest.
 *
 * <p>For a given number of portions that go up the total is known, and with it the error of each portion either way. So
 * instead of every way of going up or down each number is looked at, and the smallest limit under which as many portions
 * may go up as must.
 */
public final class Rounding {
    private static final Comparator<Rounded> BEST =
            Comparator.comparing(Rounded::largestError).thenComparing(Rounded::errors);

    /** With more portions than that nobody mixes, and there are too many ways to try each. */
    private static final int MOST_TRIED = 12;

    private final List<Target> wanted;
    private final Fraction step;
    private final Fraction whole;
    /** Where in the order the portions are that may go either way. */
    private final List<Integer> free;

    private Rounding(List<Target> wanted, Fraction step) {
        this.wanted = wanted;
        this.step = step;
        this.whole = Fraction.sum(wanted.stream().map(Target::grams));
        this.free =
                IntStream.range(0, wanted.size()).filter(this::isFree).boxed().toList();
    }

    /**
     * @param wanted at least one portion
     * @param step of the scale, more than nothing
     */
    public static Rounded toStep(List<Target> wanted, Grams step) {
        return new Rounding(wanted, Fraction.of(step.amount())).best();
    }

    /**
     * As {@link #toStep(List, Grams)}, but of the ways that fit, where any of them does: what is wanted at the very limit of
     * the directions is not rounded beyond it.
     *
     * @param fits whether these grams, in the order of the portions, are within the directions
     */
    public static Rounded toStep(List<Target> wanted, Grams step, Predicate<List<Fraction>> fits) {
        var rounding = new Rounding(wanted, Fraction.of(step.amount()));
        var best = rounding.best();
        return fits.test(best.grams()) || rounding.free.size() > MOST_TRIED
                ? best
                : rounding.everyWay()
                        .sorted(BEST)
                        .filter(way -> fits.test(way.grams()))
                        .findFirst()
                        .orElse(best);
    }

    /** Each portion that may go either way goes down where its bit is 0, and up where it is 1. */
    private Stream<Rounded> everyWay() {
        var lows = IntStream.range(0, wanted.size()).mapToObj(this::low).toList();
        return IntStream.range(0, 1 << free.size()).mapToObj(bits -> {
            var grams = new ArrayList<>(lows);
            IntStream.range(0, free.size())
                    .filter(bit -> (bits >> bit & 1) == 1)
                    .mapToObj(free::get)
                    .forEach(i -> grams.set(i, grams.get(i).plus(step)));
            return rounded(grams, Fraction.sum(grams.stream()));
        });
    }

    private Rounded best() {
        return IntStream.rangeClosed(0, free.size())
                .mapToObj(this::withSoManyUp)
                .flatMap(Optional::stream)
                .min(BEST.thenComparing(rounded -> rounded.total().minus(whole).abs()))
                .orElseThrow();
    }

    private boolean isFree(int i) {
        var one = wanted.get(i);
        var steps = one.grams().dividedBy(step);
        return !one.stands() && !steps.isWhole() && steps.floor().signum() > 0;
    }

    private Stream<Integer> standing() {
        return IntStream.range(0, wanted.size()).boxed().filter(i -> !free.contains(i));
    }

    private Fraction low(int i) {
        var one = wanted.get(i);
        if (one.stands()) {
            return one.grams();
        }
        var steps = one.grams().dividedBy(step).floor();
        return steps.signum() == 0 ? step : new Fraction(steps, BigInteger.ONE).times(step);
    }

    /** The share that a portion would have is off by so much of the share that it should have. */
    private Fraction error(int i, Fraction grams, Fraction total) {
        var share = grams.dividedBy(total);
        var right = wanted.get(i).grams().dividedBy(whole);
        return share.dividedBy(right).minus(Fraction.ONE).abs();
    }

    /** A portion that may go either way, with the error that it then has. */
    private record Way(int at, Fraction down, Fraction up) {
        boolean mustGoUp(Fraction limit) {
            return down.compareTo(limit) > 0;
        }

        boolean mayGoUp(Fraction limit) {
            return up.compareTo(limit) <= 0;
        }

        Fraction costOfUp() {
            return up.minus(down);
        }
    }

    private Optional<Rounded> withSoManyUp(int many) {
        var lows = IntStream.range(0, wanted.size()).mapToObj(this::low).toList();
        var total = Fraction.sum(lows.stream()).plus(step.times(Fraction.of(many)));
        var ways = free.stream()
                .map(i -> new Way(
                        i, error(i, lows.get(i), total), error(i, lows.get(i).plus(step), total)))
                .toList();
        // What stands may be off by more than that already; then the others may too, where their sum is less so.
        var standing = standing().map(i -> error(i, lows.get(i), total)).max(Comparator.naturalOrder());
        return smallestLimit(ways, many).map(limit -> {
            var grams = new ArrayList<>(lows);
            goingUp(
                            ways,
                            many,
                            standing.filter(more -> more.compareTo(limit) > 0).orElse(limit))
                    .forEach(way -> grams.set(way.at, grams.get(way.at).plus(step)));
            return rounded(grams, total);
        });
    }

    private static Optional<Fraction> smallestLimit(List<Way> ways, int many) {
        var limits = ways.isEmpty()
                ? List.of(Fraction.ZERO)
                : ways.stream()
                        .flatMap(way -> Stream.of(way.down, way.up))
                        .distinct()
                        .sorted()
                        .toList();
        var below = -1;
        var reached = limits.size();
        while (reached - below > 1) {
            var middle = (below + reached) / 2;
            if (isPossible(ways, many, limits.get(middle))) {
                reached = middle;
            } else {
                below = middle;
            }
        }
        return reached < limits.size() ? Optional.of(limits.get(reached)) : Optional.empty();
    }

    /** Each has a way to go, and as many as must may go up. A higher limit never takes a way away. */
    private static boolean isPossible(List<Way> ways, int many, Fraction limit) {
        var must = ways.stream().filter(way -> way.mustGoUp(limit)).toList();
        var may = ways.stream().filter(way -> way.mayGoUp(limit)).count();
        return must.stream().allMatch(way -> way.mayGoUp(limit)) && must.size() <= many && many <= may;
    }

    private static List<Way> goingUp(List<Way> ways, int many, Fraction limit) {
        var first = Comparator.comparing((Way way) -> !way.mustGoUp(limit)).thenComparing(Way::costOfUp);
        return ways.stream()
                .filter(way -> way.mayGoUp(limit))
                .sorted(first)
                .limit(many)
                .toList();
    }

    private Rounded rounded(List<Fraction> grams, Fraction total) {
        var errors = IntStream.range(0, grams.size())
                .mapToObj(i -> error(i, grams.get(i), total))
                .toList();
        var largest = errors.stream().max(Comparator.naturalOrder()).orElseThrow();
        return new Rounded(grams, largest, Fraction.sum(errors.stream()));
    }
}
