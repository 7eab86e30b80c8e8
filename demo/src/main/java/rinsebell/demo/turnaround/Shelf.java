package rinsebell.demo.turnaround;

import static rinsebell.app.shelf.InventedProducts.BEIGE;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_10;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_20;
import static rinsebell.app.shelf.InventedProducts.MILD_CREAM;
import static rinsebell.app.shelf.InventedProducts.POWDER;
import static rinsebell.app.shelf.InventedProducts.TONER;

import java.util.List;
import rinsebell.floor.Floor;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Directions;
import rinsebell.floor.unit.Grams;

/** What is mixed: equal parts of a product and its developer. */
record Shelf(Floor floor) {
    private static final Grams PORTION = Grams.of(40);

    List<Weighed> bowl(Wish.What what) {
        return switch (what) {
            case COLOUR -> List.of(of(BEIGE), of(DEVELOPER_20));
            case POWDER -> List.of(of(POWDER), of(DEVELOPER_20));
            case CREAM -> List.of(of(MILD_CREAM), of(DEVELOPER_20));
        };
    }

    List<Weighed> toner() {
        return List.of(of(TONER), of(DEVELOPER_10));
    }

    private Weighed of(Directions directions) {
        return floor.salon().offered().stream()
                .filter(product -> product.directions().name().equals(directions.name()))
                .findFirst()
                .map(product -> new Weighed(product.id(), PORTION))
                .orElseThrow();
    }
}
