package rinsebell.floor.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.visit.Visit;

/**
 * What was in a bowl, or in a part of one that was divided, and what was left of it.
 *
 * @param size grams that were in it
 * @param visit whose; null for nobody's
 * @param portions what was in it
 */
public record BowlUse(Bowl bowl, Fraction size, @Nullable Visit visit, List<Portion> portions) {
    public BowlUse {
        portions = List.copyOf(portions);
    }

    /**
     * So much of one product in it.
     *
     * @param edition of its directions, in force at mixing
     * @param cost empty while no price of it is known
     */
    public record Portion(ProductId product, int edition, Fraction grams, Optional<Fraction> cost) {}

    public Optional<Visit> whose() {
        return Optional.ofNullable(visit);
    }

    /** Which part of it was left, from 0 to 1; empty while it stands, or when nobody said. */
    public Optional<Fraction> share() {
        return said().map(left ->
                size.signum() == 0 ? Fraction.ZERO : left.of(size).dividedBy(size));
    }

    private Optional<Left> said() {
        return bowl.isThrownAway() ? Optional.ofNullable(bowl.left()) : Optional.empty();
    }

    UseSum sum() {
        return UseSum.of(portions.stream().map(this::sum));
    }

    UseSum sumOf(ProductId product) {
        return UseSum.of(
                portions.stream().filter(one -> one.product().equals(product)).map(this::sum));
    }

    private UseSum sum(Portion portion) {
        var cost = Cost.of(portion.cost());
        var told = share();
        return new UseSum(
                portion.grams(),
                told.map(share -> portion.grams()).orElse(Fraction.ZERO),
                told.map(portion.grams()::times).orElse(Fraction.ZERO),
                cost,
                told.filter(share -> share.signum() > 0).map(cost::times).orElse(Cost.NONE));
    }

    Stream<ProductId> products() {
        return portions.stream().map(Portion::product);
    }
}
