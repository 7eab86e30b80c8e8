package rinsebell.floor.mix;

import java.util.List;
import java.util.Set;
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
    public sealed interface Known {
        Grams grams();

        /** How many parts of a recipe weigh that much. */
        Fraction partsOf(Recipe recipe);

        /** Whether it is what this portion weighs. */
        boolean isOf(int portion);
    }

    /** What the whole bowl should weigh. */
    public record Whole(Grams grams) implements Known {
        @Override
        public Fraction partsOf(Recipe recipe) {
            return Fraction.sum(recipe.shares.stream().map(Share::parts));
        }

        @Override
        public boolean isOf(int portion) {
            return false;
        }
    }

    /**
     * What some portions weigh together, since it is wanted so or all there is.
     *
     * @param portions their places among the shares, from 0
     */
    public record Weight(Set<Integer> portions, Grams grams) implements Known {
        public Weight {
            portions = Set.copyOf(portions);
        }

        @Override
        public Fraction partsOf(Recipe recipe) {
            return Fraction.sum(portions.stream().map(i -> recipe.shares.get(i).parts()));
        }

        @Override
        public boolean isOf(int portion) {
            return portions.equals(Set.of(portion));
        }
    }

    /**
     * By how much of itself the share of each portion is off in a bowl: 0.02 for two percent too much of it.
     *
     * @param grams of each portion, at least one of them more than none
     */
    public List<Fraction> errors(List<Grams> grams) {
        var weights = grams.stream().map(one -> Fraction.of(one.amount())).toList();
        var whole = Fraction.sum(weights.stream());
        var parts = Fraction.sum(shares.stream().map(Share::parts));
        return IntStream.range(0, shares.size())
                .mapToObj(i -> weights.get(i)
                        .dividedBy(whole)
                        .dividedBy(shares.get(i).parts().dividedBy(parts))
                        .minus(Fraction.ONE))
                .toList();
    }

    /** What each portion should weigh, exactly; one that was said stands. */
    public List<Target> targets(Known known) {
        var gramsOfAPart = Fraction.of(known.grams().amount()).dividedBy(known.partsOf(this));
        return IntStream.range(0, shares.size())
                .mapToObj(i -> new Target(shares.get(i).parts().times(gramsOfAPart), known.isOf(i)))
                .toList();
    }
}
