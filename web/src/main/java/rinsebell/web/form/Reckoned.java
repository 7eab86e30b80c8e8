package rinsebell.web.form;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.mix.Pouring;
import rinsebell.floor.mix.Recipe;
import rinsebell.floor.mix.Rounded;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.VisitId;

/**
 * What is to be weighed.
 *
 * @param recipe in the right ratio
 * @param pouring what lies in the bowl of it
 * @param plan what the scale should show of each portion, in the order of the recipe
 */
record Reckoned(
        Recipe recipe,
        Pouring pouring,
        Rounded plan,
        BowlReason reason,
        @Nullable VisitId visit) {
    /** What lies in the bowl once something of each portion does; until then what is planned. */
    List<Weighed> weighed() {
        return portions()
                .mapToObj(i -> new Weighed(product(i), isWeighed() ? lies(i).orElseThrow() : planned(i)))
                .toList();
    }

    /** By how much of itself the share of each portion is off, in the bowl as it lies or else as it is planned. */
    List<Fraction> errors() {
        return recipe.errors(weighed().stream().map(Weighed::grams).toList());
    }

    /** Whether something of each portion lies in the bowl. */
    boolean isWeighed() {
        return pouring.poured().stream().allMatch(Optional::isPresent);
    }

    /** The grams of all portions in one word, to compare with what a page showed. */
    String shown() {
        return weighed().stream()
                .map(one -> one.grams().amount().toPlainString())
                .collect(Collectors.joining(" "));
    }

    IntStream portions() {
        return IntStream.range(0, recipe.shares().size());
    }

    ProductId product(int portion) {
        return recipe.shares().get(portion).product();
    }

    Grams planned(int portion) {
        return new Grams(plan.grams().get(portion).rounded(2));
    }

    Optional<Grams> lies(int portion) {
        return pouring.poured().get(portion);
    }

    /** What is wanted of a portion above what lies in the bowl; nothing for one with which it is right. */
    Optional<Grams> missing(int portion) {
        var more = planned(portion)
                .amount()
                .subtract(lies(portion).orElse(Grams.NONE).amount());
        return more.signum() > 0 ? Optional.of(new Grams(more)) : Optional.empty();
    }

    /** Which portion comes next; empty when the bowl is right. */
    OptionalInt next() {
        return portions().filter(i -> missing(i).isPresent()).findFirst();
    }
}
