package rinsebell.app.api;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.Tub;

/**
 * A product on the shelf.
 *
 * @param edition how many times its directions were entered
 * @param offered whether it may go into a new bowl
 * @param tub what a tub holds and costs now; absent while nobody has said
 * @param directions the newest
 */
record ProductJson(
        long id, int edition, boolean offered, @Nullable TubJson tub, Map<String, Object> directions) {
    record TubJson(BigDecimal grams, BigDecimal price) {
        static TubJson of(Tub tub) {
            return new TubJson(tub.grams().amount(), tub.price());
        }
    }

    static ProductJson of(Product product) {
        return new ProductJson(
                product.id().value(),
                product.edition(),
                !product.withdrawn(),
                product.tub().map(TubJson::of).orElse(null),
                DirectionsJson.of(product.directions()));
    }
}
