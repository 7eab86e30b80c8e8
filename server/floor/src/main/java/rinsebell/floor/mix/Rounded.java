package rinsebell.floor.mix;

import java.util.List;
import rinsebell.floor.unit.Fraction;

/**
 * Weights that a scale can show.
 *
 * @param grams of each portion, in the order asked
 * @param largestError by how much of itself the share of any portion is off at most: 0.02 is two percent of it
 * @param errors the sum of these over all portions
 */
public record Rounded(List<Fraction> grams, Fraction largestError, Fraction errors) {
    public Rounded {
        grams = List.copyOf(grams);
    }

    public Fraction total() {
        return Fraction.sum(grams.stream());
    }
}
