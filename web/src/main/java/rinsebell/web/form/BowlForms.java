package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Command;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.command.DivideBowl;
import rinsebell.floor.command.FillRecipe;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.ThrowAway;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Grams;

/** Presses about bowls. */
final class BowlForms {
    static final String BOWLS = "bowls";
    static final int MOST_PORTIONS = 100;
    static final Entries.Bounds GRAMS = new Entries.Bounds(new BigDecimal("0.1"), BigDecimal.valueOf(2000), 2);

    /** A bowl that is mixed. */
    static final PressForm MIX = PressForm.asking(BowlForms::mix);

    private BowlForms() {}

    static void enter(Presses presses) {
        presses.enter(BOWLS, Presses.PLAIN, MIX);
        presses.enter(BOWLS, "recipe", PressForm.asking(BowlForms::recipe));
        presses.enter(BOWLS, "divide", PressForm.asking(BowlForms::divide));
        presses.enter(BOWLS, "throw-away", PressForm.asking(BowlForms::throwAway));
    }

    private static BowlId bowl(Entries entries) {
        return new BowlId(entries.id());
    }

    private static Command mix(Entries entries) {
        return new Mix(
                neededPortions(entries),
                entries.choice("reason", BowlReason.class, BowlReason.FIRST),
                EntryHeads.visitOrNull(entries, "visit"));
    }

    private static Command recipe(Entries entries) {
        return new FillRecipe(bowl(entries), neededPortions(entries));
    }

    private static Command divide(Entries entries) {
        var same = entries.floor().bowl(bowl(entries)).map(Bowl::reason).orElse(BowlReason.FIRST);
        return new DivideBowl(
                bowl(entries),
                entries.choice("reason", BowlReason.class, same),
                EntryHeads.visitOrNull(entries, "visit"));
    }

    /** By eye or by the scale, or not at all. No more can be left than was mixed, where that is known. */
    private static Command throwAway(Entries entries) {
        var bowl = bowl(entries);
        var most = entries.floor().bowl(bowl).filter(Bowl::isRecipeKnown).map(Bowl::mixed);
        var estimated = entries.choice("left", Left.Quarters.class).map(Left.Estimated::new);
        var bounds = new Entries.Bounds(BigDecimal.ZERO, most.map(Grams::amount).orElse(GRAMS.most()), GRAMS.places());
        var weighed = entries.decimal("grams", bounds).map(Grams::new).map(Left.Weighed::new);
        if (estimated.isPresent() && weighed.isPresent()) {
            entries.fault("grams", Fault.TWO_ANSWERS);
        }
        if (isLeftEmpty(entries)) {
            entries.needed("grams", weighed, new Left.Weighed(Grams.NONE));
        }
        return new ThrowAway(
                bowl,
                Stream.<Left>concat(weighed.stream(), estimated.stream())
                        .findFirst()
                        .orElse(null));
    }

    /** Whoever sends the form of the scale means to say a weight; "nobody looked" is another press. */
    private static boolean isLeftEmpty(Entries entries) {
        return !entries.everyEntryCounts()
                && entries.names().contains("grams")
                && entries.all("left").stream().allMatch(String::isBlank);
    }

    /** A bowl is mixed of something; what is already on and nobody knows is another press. */
    static List<Weighed> neededPortions(Entries entries) {
        var portions = portions(entries);
        return entries.needed("portions.0.grams", Optional.of(portions).filter(some -> !some.isEmpty()), portions);
    }

    private static List<Weighed> portions(Entries entries) {
        var portions = new ArrayList<Weighed>();
        for (var i = 0; i < MOST_PORTIONS; i++) {
            portion(entries, "portions." + i).ifPresent(portions::add);
        }
        if (entries.names().stream().anyMatch(name -> name.startsWith("portions." + MOST_PORTIONS + "."))) {
            entries.fault("portions", Fault.TOO_MANY, MOST_PORTIONS);
        }
        return portions;
    }

    private static Optional<Weighed> portion(Entries entries, String row) {
        if (isUnused(entries, row)) {
            return Optional.empty();
        }
        var grams = entries.decimal(row + ".grams", GRAMS).map(Grams::new);
        var product = entries.number(row + ".product")
                .map(ProductId::new)
                .flatMap(id -> entries.known(
                        row + ".product", entries.floor().salon().product(id).map(Product::id), Fault.NOT_KNOWN));
        return Optional.of(new Weighed(
                entries.needed(row + ".product", product, new ProductId(0)),
                entries.needed(row + ".grams", grams, Grams.NONE)));
    }

    /** A row of a form with a product and no grams is one that nobody used: forms offer whole shelves. */
    private static boolean isUnused(Entries entries, String row) {
        var nothingWeighed = entries.all(row + ".grams").stream().allMatch(String::isBlank);
        var nothingNamed = entries.all(row + ".product").stream().allMatch(String::isBlank);
        return nothingWeighed && (nothingNamed || !entries.everyEntryCounts());
    }
}
