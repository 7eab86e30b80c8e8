package rinsebell.floor.testing;

import rinsebell.floor.product.Directions;
import rinsebell.floor.unit.Grams;

/**
 * Grams of a product that is named by its directions; a {@link Story} enters the product when it is first used.
 *
 * @param of which product
 * @param grams how much
 */
public record Scoop(Directions of, Grams grams) {
    public static Scoop g(long grams, Directions of) {
        return new Scoop(of, Grams.of(grams));
    }

    public static Scoop g(String grams, Directions of) {
        return new Scoop(of, Grams.of(grams));
    }
}
