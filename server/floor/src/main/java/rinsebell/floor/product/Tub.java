package rinsebell.floor.product;

import java.math.BigDecimal;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/**
 * A tub, bottle or tube as the salon buys it.
 *
 * @param grams what it holds; more than none
 * @param price what it costs, in the salon's own money; zero or more, to two decimal places
 */
public record Tub(Grams grams, BigDecimal price) {
    public static final int PLACES = 2;

    public Tub {
        if (grams.compareTo(Grams.NONE) <= 0) {
            throw new IllegalArgumentException("a tub holds something: " + grams);
        }
        if (price.signum() < 0 || price.stripTrailingZeros().scale() > PLACES) {
            throw new IllegalArgumentException("a price is not negative and has two places at most: " + price);
        }
        price = price.setScale(PLACES);
    }

    /** What so many grams out of it cost, exactly. */
    public Fraction costOf(Fraction some) {
        return some.times(Fraction.of(price)).dividedBy(Fraction.of(grams.amount()));
    }
}
