package rinsebell.floor.mix;

import java.util.List;
import java.util.stream.IntStream;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/**
 * Portions in the right ratio, of no weight yet.
 *
 * @param shares at least one
 */
public record Recipe(List<Share> shares) {
    public Recipe {
        shares = List.copyOf(shares);
        if (shares.isEmpty()) {
            throw new IllegalArgumentException("a recipe has a portion");
        }
    }

    /**
     * So many parts of a product.
     *
     * @param parts by weight, more than none; only how they compare with the other portions' counts
     */
    public record Share(ProductId product, Fraction parts) {
        public Share {
            if (parts.signum() <= 0) {
                throw new IllegalArgumentException("no parts of " + product + ": " + parts);
            }
        }
    }

    /** The one number that is known, from which all others follow. */
    public sealed interface Known {}

    /** What the whole bowl should weigh. */
    public record Whole(Grams grams) implements Known {}

    /**
     * What one portion weighs, since it is wanted so or all there is.
     *
     * @param portion its place among the shares, from 0
     */
    public record Weight(int portion, Grams grams) implements Known {}

    /** What each portion should weigh, exactly; one that was said stands. */
    public List<Target> targets(Known known) {
        var factor = factor(known);
        return IntStream.range(0, shares.size())
                .mapToObj(i -> new Target(
                        shares.get(i).parts().times(factor), known instanceof Weight weight && weight.portion() == i))
                .toList();
    }

    private Fraction factor(Known known) {
        if (known instanceof Weight weight) {
            return Fraction.of(weight.grams().amount())
                    .dividedBy(shares.get(weight.portion()).parts());
        }
        var whole = shares.stream().map(Share::parts).reduce(Fraction.ZERO, Fraction::plus);
        return Fraction.of(((Whole) known).grams().amount()).dividedBy(whole);
    }
}
