package rinsebell.web.form;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;

/**
 * In which row of a form a product stands. A form that comes back has its rows as they were, whatever has been withdrawn or
 * entered meanwhile: grams that were typed for one product never turn up at another.
 */
final class ShelfRows {
    private final Map<ProductId, Integer> typed = new HashMap<>();
    private int next;

    ShelfRows(Fields fields) {
        for (var i = 0; i < BowlForms.MOST_PORTIONS; i++) {
            var row = i;
            product(fields, row).ifPresent(product -> {
                typed.putIfAbsent(product, row);
                next = row + 1;
            });
        }
    }

    private static Optional<ProductId> product(Fields fields, int row) {
        return fields.first("portions." + row + ".product")
                .flatMap(text -> Typed.number(Typed.tidy(text)))
                .map(number -> new ProductId(number.longValue()));
    }

    boolean isTyped(Product product) {
        return typed.containsKey(product.id());
    }

    int of(Product product) {
        return Optional.ofNullable(typed.get(product.id())).orElseGet(() -> next++);
    }
}
