package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.List;
import rinsebell.floor.Command;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.Stock;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Tub;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.unit.Grams;

/** Presses about the products on the shelf. */
final class ProductForms {
    private static final String PRODUCTS = "products";

    private static final Entries.Bounds TUB = new Entries.Bounds(new BigDecimal("0.1"), BigDecimal.valueOf(100_000), 2);

    /** A product may come as a gift; in some money a tub costs tens of thousands. */
    private static final Entries.Bounds PRICE =
            new Entries.Bounds(BigDecimal.ZERO, BigDecimal.valueOf(10_000_000), Tub.PLACES);

    private ProductForms() {}

    static void enter(Presses presses, List<Directions> shelf) {
        presses.enter(PRODUCTS, Presses.PLAIN, PressForm.asking(ProductForms::product));
        presses.enter(PRODUCTS, "directions", PressForm.asking(ProductForms::directions));
        presses.enter(PRODUCTS, "offer", PressForm.asking(ProductForms::offer));
        presses.enter(PRODUCTS, "price", PressForm.asking(ProductForms::price));
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

    private static Command price(Entries entries) {
        var grams = entries.needed("tubGrams", entries.decimal("tubGrams", TUB), TUB.least());
        var price = entries.needed("price", entries.decimal("price", PRICE), PRICE.least());
        return new Arrange(new SalonEvent.TubPriced(id(entries), new Tub(new Grams(grams), price)), null);
    }

    private static ProductId id(Entries entries) {
        return new ProductId(entries.id());
    }
}
