package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.view.Press;

/**
 * What is to be mixed again, as large as it was, smaller or larger. Where today's directions give the same grams it is at
 * the bench; else, since the bench would make another mixture of it, where grams are typed and judged as they are.
 *
 * @param from where it is written down, such as "bowl=7"
 * @param portions as they were weighed
 * @param whom for; null for nobody yet
 */
record MixedBefore(
        String from, List<Portion> portions, @Nullable VisitId whom) {
    private static final List<String> SIZES = List.of("1", "0.5", "1.5");
    private static final String SIZE = "size";
    private static final Fields FINEST = Fields.of("step", "tenth");
    private static final BigDecimal HARDLY = new BigDecimal("0.1");

    MixedBefore {
        portions = List.copyOf(portions);
    }

    static MixedBefore of(Bowl bowl) {
        return new MixedBefore("bowl=" + bowl.id().value(), bowl.portions(), bowl.forVisit());
    }

    /**
     * None where nobody knows what was in it, or something of it is not offered any more.
     *
     * @param words what the presses are called, by their size
     */
    List<Press> presses(PageAsk ask, String words) {
        if (portions.isEmpty() || !portions.stream().allMatch(portion -> isOffered(ask, portion))) {
            return List.of();
        }
        var isAtTheBench = isSameAtTheBench(ask);
        return SIZES.stream()
                .map(size -> Press.opens(ask.say(words + "." + size), "", address(ask, size, isAtTheBench)))
                .toList();
    }

    private static boolean isOffered(PageAsk ask, Portion portion) {
        return ask.salon()
                .product(portion.product())
                .filter(product -> !product.withdrawn())
                .isPresent();
    }

    private String address(PageAsk ask, String size, boolean isAtTheBench) {
        var visit = whom == null ? "" : "&visit=" + whom.value();
        return SameAgain.of(this, ask.salon(), new BigDecimal(size))
                .filter(typed -> isAtTheBench)
                .map(typed -> "/mixtures?" + typed.query())
                .orElse("/bowls/mix?" + from + "&" + SIZE + "=" + size + visit);
    }

    /** Whether the bench comes to the same grams, on the finest scale. */
    private boolean isSameAtTheBench(PageAsk ask) {
        return SameAgain.of(this, ask.salon(), BigDecimal.ONE)
                .map(typed -> new Entries(ask.target(), typed.orElse(FINEST)))
                .filter(entries -> MixtureForm.reckoned(entries)
                        .filter(one -> one.weighed().size() == portions.size())
                        .filter(one -> one.weighed().stream().allMatch(this::isAsItWas))
                        .isPresent())
                .filter(entries -> entries.errors().isEmpty())
                .isPresent();
    }

    private boolean isAsItWas(Weighed weighed) {
        return portions.stream()
                .filter(portion -> portion.product().equals(weighed.product()))
                .map(portion ->
                        portion.grams().amount().subtract(weighed.grams().amount()))
                .anyMatch(off -> off.abs().compareTo(HARDLY) <= 0);
    }

    /** What an address asks for: the portions of a bowl or of a recipe, at a size; none where it asks for nothing. */
    static List<Portion> asked(PageAsk ask) {
        var size = ask.typed().first(SIZE).filter(SIZES::contains).map(BigDecimal::new);
        return size.map(by ->
                        written(ask).stream().map(portion -> sized(portion, by)).toList())
                .orElse(List.of());
    }

    private static List<Portion> written(PageAsk ask) {
        var floor = ask.moment().floor();
        var bowl = ask.number("bowl").map(BowlId::new).flatMap(floor::bowl).map(Bowl::portions);
        var recipe = ask.number("recipe")
                .map(RecipeId::new)
                .flatMap(floor.salon()::recipe)
                .map(known -> known.newest().portions());
        return bowl.or(() -> recipe).orElse(List.of());
    }

    private static Portion sized(Portion portion, BigDecimal by) {
        var grams = Fraction.of(portion.grams().amount().multiply(by)).rounded(2);
        return new Portion(portion.product(), portion.edition(), new Grams(grams));
    }
}
