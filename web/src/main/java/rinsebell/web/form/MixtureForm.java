package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Command;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.mix.Choice;
import rinsebell.floor.mix.Pouring;
import rinsebell.floor.mix.Recipe;
import rinsebell.floor.mix.Rounded;
import rinsebell.floor.mix.Target;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.rule.MixtureRules;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.VisitId;

/** Reads what was chosen for a bowl and the one number that is known: what is to be weighed follows from it. */
final class MixtureForm {
    static final String MIXTURES = "mixtures";
    static final String DEVELOPER = "developer";
    static final int MOST_PRODUCTS = 20;

    /** What the page showed when it was pressed: a number that was typed last may not have been reckoned with yet. */
    static final String SHOWN = "shown";

    private static final Entries.Bounds GRAMS = new Entries.Bounds(new BigDecimal("0.1"), BigDecimal.valueOf(2000), 2);
    private static final Entries.Bounds PER_60 = new Entries.Bounds(new BigDecimal("0.1"), BigDecimal.valueOf(600), 2);
    private static final Entries.Bounds EXTRA = new Entries.Bounds(BigDecimal.ZERO, BigDecimal.valueOf(600), 2);

    private static final Grams SIXTY = Grams.of(60);

    /** What the scale shows in one step. */
    enum Step {
        GRAM("1"),
        HALF("0.5"),
        TENTH("0.1");

        private final Grams grams;

        Step(String grams) {
            this.grams = Grams.of(grams);
        }

        Grams grams() {
            return grams;
        }
    }

    /** A bowl that is mixed as it was reckoned. */
    static final PressForm MIX = PressForm.asking(MixtureForm::mix);

    private MixtureForm() {}

    static void enter(Presses presses) {
        presses.enter(MIXTURES, Presses.PLAIN, MIX);
    }

    private static Command mix(Entries entries) {
        var reckoned = reckoned(entries);
        var shown = entries.value(SHOWN);
        reckoned.filter(one -> shown.filter(other -> !other.equals(one.shown())).isPresent())
                .ifPresent(one -> entries.fault("grams", Fault.SHOWN_OTHERWISE));
        return reckoned.map(one -> new Mix(one.weighed(), one.reason(), one.visit()))
                .orElse(new Mix(List.of(), BowlReason.FIRST, null));
    }

    /** Empty, with what is wrong noted, while something is missing or wrong. */
    static Optional<Reckoned> reckoned(Entries entries) {
        var step = entries.choice("step", Step.class, Step.GRAM);
        var choice = choice(entries);
        var of = of(entries, choice);
        var poured = poured(entries);
        var grams = entries.needed("grams", entries.decimal("grams", GRAMS).map(Grams::new), Grams.NONE);
        var reason = entries.choice("reason", BowlReason.class, BowlReason.FIRST);
        var visit = EntryHeads.visitOrNull(entries, "visit");
        return choice.recipe(entries.floor().salon())
                .filter(recipe -> grams.amount().signum() > 0)
                .flatMap(recipe -> known(entries, recipe, of, grams)
                        .map(known -> new Pouring(
                                recipe.targets(known),
                                step.grams(),
                                poured.subList(0, recipe.shares().size())))
                        .map(pouring -> reckoned(entries, recipe, pouring, reason, visit)))
                .filter(one -> isWithinABowl(entries, one.plan(), grams))
                .filter(one -> canBeWeighed(entries, one, step.grams(), grams));
    }

    /** A portion of less than half a step would be rounded to more than twice of itself. */
    private static boolean canBeWeighed(Entries entries, Reckoned one, Grams step, Grams known) {
        var least = one.pouring().wanted().stream()
                .map(Target::grams)
                .min(Fraction::compareTo)
                .orElseThrow();
        var half = Fraction.of(step.amount()).dividedBy(Fraction.of(2));
        if (least.compareTo(half) >= 0) {
            return true;
        }
        var needed = half.dividedBy(least).times(Fraction.of(known.amount()));
        entries.fault(
                "grams",
                Fault.TOO_LITTLE_TO_WEIGH,
                needed.plus(Fraction.of(new BigDecimal("0.05"))).rounded(1),
                step.amount());
        return false;
    }

    /** What lies in the bowl of one portion may ask for more of the others than any bowl holds: then it was mistyped. */
    private static Reckoned reckoned(
            Entries entries, Recipe recipe, Pouring pouring, BowlReason reason, @Nullable VisitId visit) {
        var plan = pouring.plan(grams -> isWithinDirections(entries, recipe, grams));
        var largest = IntStream.range(0, recipe.shares().size())
                .filter(i -> pouring.poured().get(i).isPresent())
                .boxed()
                .max(Comparator.comparing(
                        i -> Fraction.of(pouring.poured().get(i).orElseThrow().amount())
                                .dividedBy(pouring.wanted().get(i).grams())));
        if (isTooLarge(plan) && largest.isPresent()) {
            entries.fault(weighed(largest.get()), Fault.TOO_LARGE, GRAMS.most());
            var others = new ArrayList<>(pouring.poured());
            others.set(largest.get(), Optional.empty());
            return reckoned(entries, recipe, new Pouring(pouring.wanted(), pouring.step(), others), reason, visit);
        }
        return new Reckoned(recipe, pouring, plan, reason, visit);
    }

    private static boolean isWithinDirections(Entries entries, Recipe recipe, List<Fraction> grams) {
        var salon = entries.floor().salon();
        var weighed = IntStream.range(0, grams.size())
                .mapToObj(i -> new Weighed(
                        recipe.shares().get(i).product(), new Grams(grams.get(i).rounded(2))))
                .toList();
        return MixtureRules.judge(Weighed.portions(weighed, salon), salon).stream()
                .allMatch(reason -> reason.code().isCaution());
    }

    private static String weighed(int portion) {
        return "weighed." + portion + ".grams";
    }

    /** What the scale showed, for as many portions as there can be. */
    private static List<Optional<Grams>> poured(Entries entries) {
        return IntStream.range(0, MOST_PRODUCTS + 2)
                .mapToObj(i -> poured(entries, weighed(i)))
                .toList();
    }

    /** What is no weight does not lie in the bowl. */
    private static Optional<Grams> poured(Entries entries, String field) {
        var typed = entries.decimal(field, GRAMS).map(Grams::new);
        return typed.filter(grams -> !entries.isWrong(field));
    }

    private static boolean isTooLarge(Rounded plan) {
        return plan.grams().stream().anyMatch(grams -> grams.compareTo(Fraction.of(GRAMS.most())) > 0);
    }

    /** The number that is known is small enough, and one that follows from it may not be. */
    private static boolean isWithinABowl(Entries entries, Rounded plan, Grams known) {
        if (!isTooLarge(plan)) {
            return true;
        }
        var largest = plan.grams().stream().max(Fraction::compareTo).orElseThrow();
        var atMost = Fraction.of(GRAMS.most()).dividedBy(largest).times(Fraction.of(known.amount()));
        entries.fault("grams", Fault.TOO_LARGE, atMost.rounded(1));
        return false;
    }

    /** Of what the number is: empty for the whole bowl. */
    private static Optional<Set<ProductId>> of(Entries entries, Choice choice) {
        return entries.value("of")
                .map(typed -> typed.equals(DEVELOPER)
                        ? choice.developers().stream()
                                .map(Recipe.Share::product)
                                .collect(Collectors.toSet())
                        : product(entries, "of").stream().collect(Collectors.toSet()));
    }

    /** The number of what is not in the bowl says nothing. */
    private static Optional<Recipe.Known> known(
            Entries entries, Recipe recipe, Optional<Set<ProductId>> of, Grams grams) {
        if (of.isEmpty()) {
            return Optional.of(new Recipe.Whole(grams));
        }
        var at = IntStream.range(0, recipe.shares().size())
                .filter(i -> of.get().contains(recipe.shares().get(i).product()))
                .boxed()
                .collect(Collectors.toSet());
        var known = Optional.of(at).filter(some -> !some.isEmpty()).map(some ->
                (Recipe.Known) new Recipe.Weight(some, grams));
        return entries.known("of", known, Fault.NOT_A_CHOICE);
    }

    private static Choice choice(Entries entries) {
        var chosen = chosen(entries);
        var named = entries.needed("products.0.product", Optional.of(chosen).filter(some -> !some.isEmpty()), chosen);
        var choice = new Choice(
                named,
                entries.text("mixture", Entries.LONGEST_LABEL).orElse(""),
                DeveloperForm.developers(entries),
                entries.decimal("extraPer60", EXTRA).map(Grams::new).orElse(Grams.NONE));
        if (!choice.developers().isEmpty()
                && choice.mostExtra(entries.floor().salon()).isEmpty()
                && !named.isEmpty()) {
            entries.fault(DEVELOPER, Fault.TAKES_NO_DEVELOPER);
        }
        choice.mostExtra(entries.floor().salon())
                .filter(most -> choice.extraPer60().compareTo(most) > 0)
                .ifPresent(most -> entries.fault("extraPer60", Fault.TOO_LARGE, most.amount()));
        return choice;
    }

    private static List<Choice.Chosen> chosen(Entries entries) {
        var chosen = new ArrayList<Choice.Chosen>();
        for (var i = 0; i < MOST_PRODUCTS; i++) {
            var row = "products." + i;
            var product = product(entries, row + ".product");
            var per60 = entries.decimal(row + ".per60", PER_60).map(Grams::new);
            if (product.isPresent()) {
                chosen.add(new Choice.Chosen(product.get(), per60(entries, row, per60, chosen.isEmpty())));
            }
        }
        if (entries.names().stream().anyMatch(name -> name.startsWith("products." + MOST_PRODUCTS + "."))) {
            entries.fault("products", Fault.TOO_MANY, MOST_PRODUCTS);
        }
        return chosen;
    }

    /** The first is what the others are measured by. */
    private static Grams per60(Entries entries, String row, Optional<Grams> typed, boolean first) {
        return first ? typed.orElse(SIXTY) : entries.needed(row + ".per60", typed, Grams.NONE);
    }

    /** A product that may go into a new bowl. */
    static Optional<ProductId> product(Entries entries, String field) {
        return entries.number(field)
                .map(ProductId::new)
                .flatMap(id -> entries.known(
                        field,
                        entries.floor()
                                .salon()
                                .product(id)
                                .filter(one -> !one.withdrawn())
                                .map(Product::id),
                        Fault.NOT_KNOWN));
    }
}
