package rinsebell.web.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.MixtureRole;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.view.Form;
import rinsebell.web.view.FormPage;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.View;

/**
 * From products to grams: first what does the work is chosen, then what goes with it and the one number that is known. All
 * that was chosen and typed stands in the page's address, so nothing of it is lost.
 */
final class MixturePages {
    private static final String MIXTURES = "/mixtures";
    private static final String BLEND = "blend";
    private static final String FIRST = "products.0.product";

    private final PageAsk ask;
    private final List<Product> chosen;
    private final List<MixtureRole> roles;

    private MixturePages(PageAsk ask) {
        this.chosen = chosen(ask);
        this.roles = MixtureRole.of(chosen.stream().map(Product::directions).toList());
        this.ask = ask.with(ask.typed().orElse(proposed()));
    }

    static void enter(FormPages pages) {
        pages.enter(MixtureForm.MIXTURES, Presses.PLAIN, ask -> new MixturePages(ask.opened()).page());
        pages.enter(MixtureForm.MIXTURES, "weigh", MixturePages::weigh);
    }

    /** The bench again where what was chosen does not come to a bowl. */
    private static View weigh(PageAsk ask) {
        return WeighPages.page(ask.opened())
                .<View>map(page -> page)
                .orElseGet(() -> new MixturePages(ask.opened()).page());
    }

    private static List<Product> chosen(PageAsk ask) {
        return IntStream.range(0, MixtureForm.MOST_PRODUCTS)
                .mapToObj(i -> ask.typed().first("products." + i + ".product"))
                .flatMap(Optional::stream)
                .flatMap(typed -> product(ask, typed).stream())
                .distinct()
                .toList();
    }

    private static Optional<Product> product(PageAsk ask, String typed) {
        return Typed.number(Typed.tidy(typed))
                .map(number -> new ProductId(number.longValue()))
                .flatMap(ask.salon()::product)
                .filter(product -> !product.withdrawn());
    }

    private View page() {
        return chosen.isEmpty() && ask.errors().isEmpty() ? shelf() : bowl();
    }

    /** What can be mixed, in the order of the kinds. */
    private SheetPage shelf() {
        var title = ask.say("form.mixtures");
        var presses = Arrays.stream(Kind.values())
                .filter(kind -> kind != Kind.DEVELOPER)
                .flatMap(this::shelved)
                .map(product -> Press.opens(
                        name(product),
                        ask.moment().say(product.directions().kind()),
                        MIXTURES + "?" + FIRST + "=" + number(product) + visit("&")))
                .toList();
        var typed = Press.opens(ask.say("form.bowls"), ask.say("form.mixtures.typed"), "/bowls/mix" + visit("?"));
        var parts = Stream.concat(
                        kept(),
                        Stream.of(
                                new Part(ask.say("form.mixtures.what"), List.of(), presses),
                                new Part("", List.of(), List.of(typed))))
                .toList();
        return new SheetPage(ask.shell(title, Nav.BOWLS), title, ask.say("form.mixtures.intro"), parts, List.of());
    }

    /** What was mixed for them before is likelier than anything else. */
    private Stream<Part> kept() {
        var visit = ask.number("visit").map(VisitId::new).flatMap(ask.moment().floor()::visit);
        var whom = visit.map(Visit::id).orElse(null);
        var client = visit.flatMap(known -> Optional.ofNullable(known.stay().client()));
        var theirs = client.map(id -> RecipePages.rows(ask, id, whom)).orElse(List.of());
        var house = RecipePages.rows(ask, null, whom);
        return Stream.of(
                        new Part(ask.say("sheet.recipes.theirs"), theirs, List.of()),
                        new Part(ask.say("sheet.recipes.house"), house, List.of()))
                .filter(part -> !part.rows().isEmpty());
    }

    private String visit(String before) {
        var visit = ask.value("visit", "");
        return visit.matches("\\d{1,18}") ? before + "visit=" + visit : "";
    }

    private FormPage bowl() {
        var draft = new FormDraft(ask, MixtureForm.MIXTURES);
        draft.group(names());
        chosenProducts(draft);
        mixtures(draft);
        developers(draft);
        draft.group(ask.say("form.mixtures.number"))
                .list("of", measured(), "")
                .number("grams", ask.say("form.mixtures.grams"), "")
                .choice("step", MixtureForm.Step.class, MixtureForm.Step.GRAM)
                .group("")
                .list("visit", Choices.visits(ask), "");
        lying(draft);
        var telling = new MixtureTelling(ask);
        if (telling.hangsOnReason()) {
            draft.choice("reason", BowlReason.class, BowlReason.FIRST);
        }
        draft.preview(new Form.Preview(MIXTURES + "/preview", ask.say("form.judged"), telling.sheet()));
        draft.group("")
                .opens(MIXTURES + "/weigh", ask.say("form.mixtures.weigh"))
                .opens(RecipePages.RECIPES + "/new", ask.say("form.recipes"));
        draft.group(ask.say("form.mixtures.more")).reopens("products." + chosen.size() + ".product", others());
        if (developed().findAny().isPresent() && !isBlend()) {
            draft.reopens(BLEND, List.of(new Choice("yes", ask.say("form.mixtures.blend"))));
        }
        var form = draft.whenAndWho().form(MIXTURES, MIXTURES + visit("?"));
        return new FormPage(ask.shell(form.title(), Nav.BOWLS), form);
    }

    /** What was weighed already still lies in the bowl when somebody comes back from the scale. */
    private void lying(FormDraft draft) {
        var weighed = IntStream.range(0, MixtureForm.MOST_PRODUCTS + 2)
                .mapToObj(i -> "weighed." + i + ".grams")
                .filter(name -> ask.typed()
                        .first(name)
                        .filter(grams -> !grams.isBlank())
                        .isPresent())
                .toList();
        if (!weighed.isEmpty()) {
            var names =
                    MixtureForm.reckoned(new Entries(ask.target(), ask.typed())).map(this::names);
            draft.group(ask.say("form.mixtures.lies"));
            weighed.forEach(name -> draft.number(name, label(name, names.orElse(List.of())), ""));
            draft.group("");
        }
    }

    private String label(String name, List<String> products) {
        var portion = Integer.parseInt(name.split("\\.")[1]);
        return portion < products.size()
                ? ask.say("form.grams", products.get(portion))
                : ask.say("form.mixtures.grams");
    }

    private List<String> names(Reckoned one) {
        return one.portions()
                .mapToObj(i -> ask.salon()
                        .product(one.product(i))
                        .map(MixturePages::name)
                        .orElse(""))
                .toList();
    }

    private String names() {
        return String.join(" + ", chosen.stream().map(MixturePages::name).toList());
    }

    private static String name(Product product) {
        return product.directions().name();
    }

    private static String number(Product product) {
        return Choices.number(product.id().value());
    }

    /** The others are measured by 60 g of the first. */
    private void chosenProducts(FormDraft draft) {
        for (var i = 0; i < chosen.size(); i++) {
            var row = "products." + i;
            draft.hidden(row + ".product", number(chosen.get(i)));
            if (i > 0) {
                var label = ask.say("form.mixtures.per60", name(chosen.get(i)), name(chosen.get(0)));
                draft.number(row + ".per60", label, proposed(i));
            }
        }
    }

    /** What stands in the fields before anybody types is reckoned with as well. */
    private Fields proposed() {
        return Fields.of(IntStream.range(1, chosen.size())
                .filter(i -> !proposed(i).isEmpty())
                .boxed()
                .flatMap(i -> Stream.of("products." + i + ".per60", proposed(i)))
                .toArray(String[]::new));
    }

    /** As much as directions allow of what is added, as much as of the first of what is developed; else nobody knows. */
    private String proposed(int i) {
        var kind = chosen.get(i).directions().kind();
        var limit = chosen.stream()
                .flatMap(product -> product.directions().mixing().pairings().stream())
                .filter(pairing -> pairing.with() == kind && roles.get(i) == MixtureRole.ADDED)
                .flatMap(pairing -> pairing.limit().stream())
                .min(Grams::compareTo);
        return limit.or(() -> Optional.of(Grams.of(60)).filter(any -> roles.get(i) == MixtureRole.DEVELOPED))
                .map(grams -> grams.amount().toPlainString())
                .orElse("");
    }

    private Stream<Directions> developed() {
        return IntStream.range(0, chosen.size())
                .filter(i -> roles.get(i) == MixtureRole.DEVELOPED)
                .mapToObj(i -> chosen.get(i).directions());
    }

    private void mixtures(FormDraft draft) {
        var named = developed()
                .flatMap(one -> one.mixing().mixtures().stream())
                .distinct()
                .toList();
        if (named.size() > 1) {
            var choices = named.stream()
                    .map(one -> new Choice(one.name(), ratio(one)))
                    .toList();
            draft.tiles("mixture", choices, named.get(0).name());
        }
        named.stream()
                .map(Mixture::extraPer60)
                .max(Grams::compareTo)
                .filter(extra -> extra.amount().signum() > 0)
                .ifPresent(extra -> draft.number("extraPer60", ""));
    }

    private String ratio(Mixture mixture) {
        return ask.say(
                mixture.extraPer60().amount().signum() > 0 ? "form.mixtures.ratio.more" : "form.mixtures.ratio",
                mixture.name(),
                mixture.developerPer60().amount().toPlainString(),
                mixture.extraPer60().amount().toPlainString());
    }

    /** Which developer is never assumed. One without peroxide only weakens another. */
    private void developers(FormDraft draft) {
        if (developed().findAny().isPresent()) {
            var strong = shelved(Kind.DEVELOPER).filter(one -> !isCarrier(one)).map(this::choice);
            draft.tiles(MixtureForm.DEVELOPER, strong.toList(), "");
            if (isBlend()) {
                draft.list(DeveloperForm.OTHER_DEVELOPER, blendable(), "").number(DeveloperForm.STRENGTH, "");
            }
        }
    }

    /** Nothing, and what may meet the developer that is chosen. */
    private List<Choice> blendable() {
        var one = ask.typed().first(MixtureForm.DEVELOPER).flatMap(typed -> product(ask, typed));
        var others = shelved(Kind.DEVELOPER)
                .filter(other ->
                        one.filter(chosen -> isForbidden(chosen, other)).isEmpty())
                .map(this::choice);
        return Stream.concat(Stream.of(new Choice("", ask.say("form.mixtures.choose"))), others)
                .toList();
    }

    private static boolean isCarrier(Product developer) {
        var peroxide = developer.directions().contents().peroxide();
        return peroxide != null && peroxide.value().signum() == 0;
    }

    /** Whether the developer is of two strengths. */
    private boolean isBlend() {
        return Stream.of(BLEND, DeveloperForm.OTHER_DEVELOPER, DeveloperForm.STRENGTH)
                .flatMap(name -> ask.typed().first(name).stream())
                .anyMatch(typed -> !typed.isBlank());
    }

    private Stream<Product> shelved(Kind kind) {
        return ask.salon().offered().stream()
                .filter(product -> product.directions().kind() == kind);
    }

    private Choice choice(Product product) {
        return new Choice(number(product), name(product));
    }

    /** What the number can be of: the whole bowl, or any of its products. */
    private List<Choice> measured() {
        var whole = new Choice("", ask.say("form.mixtures.whole"));
        var products = chosen.stream().map(product -> new Choice(number(product), of(name(product))));
        var developer = developed()
                .limit(1)
                .map(any -> new Choice(MixtureForm.DEVELOPER, of(ask.moment().say(Kind.DEVELOPER))));
        return Stream.of(Stream.of(whole), products, developer)
                .flatMap(choices -> choices)
                .toList();
    }

    private String of(String name) {
        return ask.say("form.mixtures.of", name);
    }

    /** What else may go in: what directions forbid is left out, for it would only be refused. */
    private List<Choice> others() {
        return ask.salon().offered().stream()
                .filter(product ->
                        !chosen.contains(product) && product.directions().kind() != Kind.DEVELOPER)
                .filter(product -> !isForbidden(product))
                .map(this::choice)
                .toList();
    }

    private boolean isForbidden(Product product) {
        return chosen.stream().anyMatch(one -> isForbidden(one, product));
    }

    private static boolean isForbidden(Product one, Product other) {
        return forbids(one, other) || forbids(other, one);
    }

    private static boolean forbids(Product one, Product other) {
        return one.directions().mixing().pairings().stream()
                .anyMatch(pairing -> pairing.rule() == Pairing.Rule.NEVER
                        && pairing.with() == other.directions().kind());
    }
}
