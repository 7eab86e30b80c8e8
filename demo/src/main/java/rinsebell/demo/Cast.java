package rinsebell.demo;

import static rinsebell.app.shelf.InventedProducts.CLEAR;
import static rinsebell.app.shelf.InventedProducts.DARK_BROWN;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_10;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_20;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_30;
import static rinsebell.app.shelf.InventedProducts.MILD_CREAM;
import static rinsebell.app.shelf.InventedProducts.POWDER;
import static rinsebell.app.shelf.InventedProducts.STRONG_CREAM;
import static rinsebell.app.shelf.InventedProducts.TONER;

import java.time.Duration;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.KeepRecipes;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ClientId;

/** The rooms, people, products and recipes of the invented salon, as they were set up when it opened. */
final class Cast {
    private static final Duration OPENING = Duration.ofDays(90);
    private static final int CHAIRS = 8;
    private static final int BASINS = 2;
    private static final int BENCH = 4;

    final StaffId orla;
    final StaffId tamsin;
    final StaffId piet;
    final StaffId noor;
    final StaffId ludo;
    final StaffId bea;

    private final Script script;
    private final Map<Directions, ProductId> products = new HashMap<>();

    Cast(Script script, ZoneId zone) {
        this(script, new House(CHAIRS, BASINS, BENCH, zone, true));
    }

    Cast(Script script, House rooms) {
        this.script = script;
        press(new SalonEvent.HouseSet(rooms), "Harrowmere Hair");
        orla = enters("Orla", Role.MANAGER);
        tamsin = enters("Tamsin", Role.STYLIST);
        piet = enters("Piet", Role.STYLIST);
        noor = enters("Noor", Role.STYLIST);
        ludo = enters("Ludo", Role.ASSISTANT);
        bea = enters("Bea", Role.DESK);
        InventedProducts.all().forEach(this::enters);
        InventedProducts.all().forEach(this::prices);
        keepsRecipes();
    }

    /** Common practice, no source, but for the names. */
    private void keepsRecipes() {
        keeps(null, "Free hand, clear", grams(60, POWDER), grams(7, CLEAR), grams(45, DEVELOPER_30));
        keeps(null, "Low tide blond", grams(60, MILD_CREAM), grams(60, DEVELOPER_20));
        keeps(null, "Lifted brunette", grams(60, STRONG_CREAM), grams(15, DARK_BROWN), grams(60, DEVELOPER_20));
        keeps(Regulars.A_K, "Pearl for the lengths", grams(40, TONER), grams(40, DEVELOPER_10));
    }

    private void keeps(@Nullable ClientId client, String name, Weighed... weighed) {
        var recipe = new KeepRecipes.Written(null, client, name, List.of(weighed));
        script.press(new KeepRecipes(List.of(recipe)), OPENING, null);
    }

    private StaffId enters(String name, Role role) {
        return new StaffId(press(new SalonEvent.StaffEntered(role), name));
    }

    private void enters(Directions directions) {
        var product = new ProductId(press(new SalonEvent.ProductEntered(directions), null));
        products.put(directions, product);
    }

    private void prices(Directions directions) {
        var product = grams(1, directions).product();
        Tubs.of(directions.kind()).ifPresent(tub -> press(new SalonEvent.TubPriced(product, tub), null));
    }

    private long press(SalonEvent event, @Nullable String text) {
        return script.press(new Arrange(event, text), OPENING, null);
    }

    /** So many grams of a product of the shelf. */
    Weighed grams(long grams, Directions of) {
        var product = products.get(of);
        if (product == null) {
            throw new IllegalStateException("not on the shelf: " + of.name());
        }
        return new Weighed(product, Grams.of(grams));
    }
}
