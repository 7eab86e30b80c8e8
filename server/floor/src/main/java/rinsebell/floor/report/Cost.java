package rinsebell.floor.report;

import java.util.Optional;
import rinsebell.floor.unit.Fraction;

/**
 * What something costs, as far as prices are known: a portion without a price is counted, and never taken as free.
 *
 * @param known the sum of what is known, exactly, in the salon's own money
 * @param missing how many portions have no price
 */
public record Cost(Fraction known, int missing) {
    static final Cost NONE = new Cost(Fraction.ZERO, 0);

    static Cost of(Optional<Fraction> cost) {
        return cost.map(one -> new Cost(one, 0)).orElse(new Cost(Fraction.ZERO, 1));
    }

    Cost plus(Cost other) {
        return new Cost(known.plus(other.known), missing + other.missing);
    }

    Cost times(Fraction share) {
        return new Cost(known.times(share), missing);
    }
}
