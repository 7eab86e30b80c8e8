package rinsebell.app.api;

import java.util.Map;
import rinsebell.floor.product.Product;

/**
 * A product on the shelf.
 *
 * @param edition how many times its directions were entered
 * @param offered whether it may go into a new bowl
 * @param directions the newest
 */
record ProductJson(long id, int edition, boolean offered, Map<String, Object> directions) {
    static ProductJson of(Product product) {
        return new ProductJson(
                product.id().value(), product.edition(), !product.withdrawn(), DirectionsJson.of(product.directions()));
    }
}
