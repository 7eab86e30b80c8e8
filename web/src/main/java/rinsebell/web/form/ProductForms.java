package rinsebell.web.form;

import java.util.List;
import rinsebell.floor.Command;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.Stock;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.SalonEvent;

/** Presses about the products on the shelf. */
final class ProductForms {
    private static final String PRODUCTS = "products";

    private ProductForms() {}

    static void enter(Presses presses, List<Directions> shelf) {
        presses.enter(PRODUCTS, Presses.PLAIN, PressForm.asking(ProductForms::product));
        presses.enter(PRODUCTS, "directions", PressForm.asking(ProductForms::directions));
        presses.enter(PRODUCTS, "offer", PressForm.asking(ProductForms::offer));
        presses.enter("shelf", Presses.PLAIN, PressForm.asking(entries -> new Stock(shelf)));
    }

    private static Command product(Entries entries) {
        return new Arrange(new SalonEvent.ProductEntered(DirectionsForm.directions(entries)), null);
    }

    private static Command directions(Entries entries) {
        var revised = new SalonEvent.DirectionsRevised(id(entries), DirectionsForm.directions(entries));
        return new Arrange(revised, null);
    }

    private static Command offer(Entries entries) {
        var offered = entries.needed("offered", entries.yesNo("offered"), true);
        return new Arrange(new SalonEvent.ProductOffered(id(entries), offered), null);
    }

    private static ProductId id(Entries entries) {
        return new ProductId(entries.id());
    }
}
