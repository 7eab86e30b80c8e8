package rinsebell.floor.report;

import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.unit.Fraction;

/**
 * What was used of something, and what of it was thrown away. Grams and costs are exact.
 *
 * @param mixed grams
 * @param told grams of it that were in bowls of which somebody said what was left
 * @param left grams of those that were left
 * @param cost of all that was mixed
 * @param lost cost of what was left
 */
public record UseSum(Fraction mixed, Fraction told, Fraction left, Cost cost, Cost lost) {
    static final UseSum NONE = new UseSum(Fraction.ZERO, Fraction.ZERO, Fraction.ZERO, Cost.NONE, Cost.NONE);

    static UseSum of(Stream<UseSum> all) {
        return all.reduce(NONE, UseSum::plus);
    }

    private UseSum plus(UseSum other) {
        return new UseSum(
                mixed.plus(other.mixed),
                told.plus(other.told),
                left.plus(other.left),
                cost.plus(other.cost),
                lost.plus(other.lost));
    }

    /** Which part was left, from 0 to 1, of what was in bowls of which somebody said it; empty when nobody did. */
    public Optional<Fraction> share() {
        return told.signum() == 0 ? Optional.empty() : Optional.of(left.dividedBy(told));
    }
}
