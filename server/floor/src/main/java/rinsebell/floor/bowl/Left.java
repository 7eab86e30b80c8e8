package rinsebell.floor.bowl;

import java.math.BigInteger;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/** What was left in a bowl at the end, without the bowl itself. */
public sealed interface Left {
    /**
     * How many grams of it.
     *
     * @param mixed what was in the bowl, in grams; more than that can't be left
     */
    Fraction of(Fraction mixed);

    /** By a scale. */
    record Weighed(Grams grams) implements Left {
        @Override
        public Fraction of(Fraction mixed) {
            var weighed = Fraction.of(grams.amount());
            return weighed.compareTo(mixed) > 0 ? mixed : weighed;
        }
    }

    /** By eye. */
    record Estimated(Quarters quarters) implements Left {
        @Override
        public Fraction of(Fraction mixed) {
            return mixed.times(quarters.share());
        }
    }

    /** No eye is finer than this. */
    enum Quarters {
        NOTHING,
        QUARTER,
        HALF,
        THREE_QUARTERS,
        ALL;

        private static final BigInteger FOUR = BigInteger.valueOf(4);

        Fraction share() {
            return new Fraction(BigInteger.valueOf(ordinal()), FOUR);
        }
    }
}
