package rinsebell.floor.mix;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/**
 * Portion after portion comes to lie in the bowl, and none is taken out again: what weighs most, measured by what was
 * wanted of it, sets the size of the whole bowl. Of what is short by less than a step no more is poured.
 *
 * @param wanted what each portion should weigh, exactly
 * @param step of the scale
 * @param poured what lies in the bowl of each; empty for what is still to be poured
 */
public record Pouring(List<Target> wanted, Grams step, List<Optional<Grams>> poured) {
    public Pouring {
        wanted = List.copyOf(wanted);
        poured = List.copyOf(poured);
        if (wanted.size() != poured.size()) {
            throw new IllegalArgumentException(poured.size() + " poured of " + wanted.size() + " portions");
        }
    }

    /**
     * What each portion should weigh now. Never less than what lies in the bowl of it.
     *
     * @param fits whether these grams are within the directions; those that are come first
     */
    public Rounded plan(Predicate<List<Fraction>> fits) {
        var planned = Rounding.toStep(wanted, step, fits);
        return size(planned)
                .filter(one -> !one.equals(Fraction.ONE))
                .map(by -> resized(by, fits))
                .orElse(planned);
    }

    /** A portion, and how large the bowl is by it. */
    private record Sized(int portion, Fraction size) {}

    /**
     * How large the bowl is by the largest portion: but one that is above the next smaller size by less than a step is only
     * as the scale could show it, and sets no size of its own.
     */
    private Optional<Fraction> size(Rounded planned) {
        var largest = new ArrayDeque<>(portions()
                .flatMap(i -> size(i, planned).map(size -> new Sized(i, size)).stream())
                .sorted(Comparator.comparing(Sized::size).reversed())
                .toList());
        while (largest.size() > 1) {
            var one = largest.remove();
            if (!isRoundedUp(one.portion, largest.element().size)) {
                return Optional.of(one.size);
            }
        }
        return largest.stream().map(Sized::size).findFirst();
    }

    private boolean isRoundedUp(int i, Fraction size) {
        var right = wanted.get(i).grams().times(size);
        return exact(i).filter(lies -> lies.compareTo(right.plus(Fraction.of(step.amount()))) < 0)
                .isPresent();
    }

    private Stream<Integer> portions() {
        return IntStream.range(0, wanted.size()).boxed();
    }

    /** How large the bowl is by one portion: 1 for what was wanted. What is as the scale should show it is that. */
    private Optional<Fraction> size(int i, Rounded planned) {
        return exact(i).map(grams -> grams.equals(planned.grams().get(i))
                ? Fraction.ONE
                : grams.dividedBy(wanted.get(i).grams()));
    }

    private Optional<Fraction> exact(int i) {
        return poured.get(i).map(Grams::amount).map(Fraction::of);
    }

    private Rounded resized(Fraction size, Predicate<List<Fraction>> fits) {
        var targets = portions().map(i -> resized(i, size)).toList();
        return Rounding.toStep(targets, step, fits);
    }

    private Target resized(int i, Fraction size) {
        var grams = wanted.get(i).grams().times(size);
        return exact(i).filter(lies -> lies.plus(Fraction.of(step.amount())).compareTo(grams) > 0)
                .map(lies -> new Target(lies, true))
                .orElse(Target.of(grams));
    }
}
