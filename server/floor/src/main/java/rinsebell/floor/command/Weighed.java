package rinsebell.floor.command;

import java.util.List;
import java.util.Optional;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.unit.Grams;

/** So many grams of a product, as it stands on the shelf now. */
public record Weighed(ProductId product, Grams grams) {
    /** As portions under the directions in force; what nobody knows is left out. */
    public static List<Portion> portions(List<Weighed> weighed, Salon salon) {
        return weighed.stream()
                .map(one -> salon.product(one.product)
                        .map(product -> new Portion(one.product, product.edition(), one.grams)))
                .flatMap(Optional::stream)
                .toList();
    }
}
