package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.mix.Blend;
import rinsebell.floor.mix.Recipe;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Percent;

/** Reads which developer is wanted for a bowl: one that stands on the shelf, or a strength between two. */
final class DeveloperForm {
    static final String OTHER_DEVELOPER = "otherDeveloper";
    static final String STRENGTH = "strength";

    private static final Entries.Bounds PERCENT = new Entries.Bounds(new BigDecimal("0.1"), BigDecimal.valueOf(12), 2);

    private DeveloperForm() {}

    /** One, or two between which the wanted strength lies. */
    static List<Recipe.Share> developers(Entries entries) {
        var one = MixtureForm.product(entries, MixtureForm.DEVELOPER);
        var strength = entries.decimal(STRENGTH, PERCENT);
        if (entries.value(OTHER_DEVELOPER).isEmpty() && entries.value(STRENGTH).isEmpty()) {
            return one.map(id -> new Recipe.Share(id, Fraction.ONE)).stream().toList();
        }
        var other = MixtureForm.product(entries, OTHER_DEVELOPER);
        entries.needed(MixtureForm.DEVELOPER, one, new ProductId(0));
        entries.needed(OTHER_DEVELOPER, other, new ProductId(0));
        if (one.isEmpty() || other.isEmpty()) {
            return List.of();
        }
        var wanted = entries.needed(STRENGTH, strength, BigDecimal.ZERO);
        var ofOne = strength(entries, MixtureForm.DEVELOPER, one.get());
        var ofOther = strength(entries, OTHER_DEVELOPER, other.get());
        return wanted.signum() == 0 || ofOne.isEmpty() || ofOther.isEmpty()
                ? List.of()
                : parts(entries, Blend.of(ofOne.get(), ofOther.get(), new Percent(wanted)), one.get(), other.get());
    }

    private static List<Recipe.Share> parts(Entries entries, Blend blend, ProductId one, ProductId other) {
        if (blend instanceof Blend.Mixed mixed) {
            return Stream.of(new Part(one, mixed.ofOne()), new Part(other, mixed.ofOther()))
                    .filter(part -> part.of().signum() > 0)
                    .map(part -> new Recipe.Share(part.product(), part.of()))
                    .toList();
        }
        var reach = (Blend.OutOfReach) blend;
        entries.fault(
                STRENGTH,
                Fault.OUT_OF_REACH,
                reach.weakest().value(),
                reach.strongest().value());
        return List.of();
    }

    private record Part(ProductId product, Fraction of) {}

    /** Never assumed: a leaflet that does not say it makes no blend. */
    private static Optional<Percent> strength(Entries entries, String field, ProductId developer) {
        return entries.known(
                field,
                entries.floor()
                        .salon()
                        .product(developer)
                        .map(product -> product.directions().contents().peroxide()),
                Fault.STRENGTH_NOT_KNOWN);
    }
}
