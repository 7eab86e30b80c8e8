package rinsebell.floor.mix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.MixtureRole;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/**
 * What was chosen for a bowl. Its directions say how much developer belongs to it.
 *
 * @param products what is not developer; the others are measured by 60 g of the first
 * @param mixture the name of the mixture that is wanted; where directions have none of that name, their first counts
 * @param developers which, in the ratio in which they stand for one; none while it is not chosen
 * @param extraPer60 grams of developer above the ratio, for 60 g of all that it activates
 */
public record Choice(List<Chosen> products, String mixture, List<Recipe.Share> developers, Grams extraPer60) {
    private static final Fraction SIXTY = Fraction.of(60);

    public Choice {
        products = List.copyOf(products);
        developers = List.copyOf(developers);
    }

    /** @param per60 grams of it for 60 g of the first product */
    public record Chosen(ProductId product, Grams per60) {
        private Fraction parts() {
            return Fraction.of(per60.amount());
        }
    }

    /** In the ratio that the directions give; empty while nothing is chosen that the salon has. */
    public Optional<Recipe> recipe(Salon salon) {
        var known = products.stream()
                .filter(one -> one.per60.amount().signum() > 0
                        && salon.product(one.product).isPresent())
                .toList();
        var shares = new ArrayList<Recipe.Share>();
        known.forEach(one -> shares.add(new Recipe.Share(one.product, one.parts())));
        var developerParts = developerParts(known, salon);
        if (developerParts.signum() > 0) {
            var whole = Fraction.sum(developers.stream().map(Recipe.Share::parts));
            developers.forEach(one -> shares.add(new Recipe.Share(
                    one.product(), developerParts.times(one.parts()).dividedBy(whole))));
        }
        return shares.isEmpty() ? Optional.empty() : Optional.of(new Recipe(shares));
    }

    /** How much more developer the directions allow for 60 g; empty while nothing is chosen that takes any. */
    public Optional<Grams> mostExtra(Salon salon) {
        return developed(products, salon)
                .map(one -> mixture(one.directions).extraPer60())
                .min(Comparator.naturalOrder());
    }

    private Fraction developerParts(List<Chosen> known, Salon salon) {
        return Fraction.sum(
                developed(known, salon).map(one -> perGram(one.directions).times(one.chosen.parts())));
    }

    private record Developed(Chosen chosen, Directions directions) {}

    private static Stream<Developed> developed(List<Chosen> chosen, Salon salon) {
        var all = chosen.stream()
                .flatMap(one ->
                        salon.product(one.product).stream().map(product -> new Developed(one, product.directions())))
                .toList();
        var roles = MixtureRole.of(all.stream().map(Developed::directions).toList());
        return IntStream.range(0, all.size())
                .filter(i -> roles.get(i) == MixtureRole.DEVELOPED)
                .mapToObj(all::get);
    }

    /** Grams of developer for a gram of a product. */
    private Fraction perGram(Directions directions) {
        return Fraction.of(mixture(directions).developerPer60().plus(extraPer60).amount())
                .dividedBy(SIXTY);
    }

    /** The mixture that counts of a product which is activated by developer. */
    private Mixture mixture(Directions directions) {
        var all = directions.mixing().mixtures();
        return all.stream()
                .filter(one -> one.name().equals(mixture))
                .findFirst()
                .orElse(all.get(0));
    }
}
