package rinsebell.floor.product;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.unit.Grams;

/**
 * What directions say about one other kind of product in the same bowl.
 *
 * @param with the other kind
 * @param rule what may be done
 * @param atMostPer60 the most grams of the other for 60 g of this product; null for no limit
 */
public record Pairing(Kind with, Rule rule, @Nullable Grams atMostPer60) {
    /** May these be in one bowl? */
    public enum Rule {
        ALLOWED,
        NEVER,
        NEVER_ON_SCALP
    }

    public Optional<Grams> limit() {
        return Optional.ofNullable(atMostPer60);
    }
}
