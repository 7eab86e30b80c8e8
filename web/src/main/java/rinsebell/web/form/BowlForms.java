package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Command;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
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
        presses.enter(BOWLS, "throw-away", PressForm.asking(entries -> new ThrowAway(bowl(entries))));
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
