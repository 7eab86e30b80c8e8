package rinsebell.web.form;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Product;
import rinsebell.floor.visit.Visit;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.View;

/** Pages about bowls. */
final class BowlPages {
    private static final String LIST = "/bowls";
    private static final int MOST_UNTOLD = 5;

    private BowlPages() {}

    static void enter(FormPages pages) {
        pages.enter(BowlForms.BOWLS, Presses.PLAIN, Nav.BOWLS, BowlPages::mix);
        pages.enter(BowlForms.BOWLS, "recipe", Nav.BOWLS, BowlPages::recipe);
        pages.enter(BowlForms.BOWLS, "divide", Nav.BOWLS, BowlPages::divide);
        pages.enter(BowlForms.BOWLS, "throw-away", LeftPages::page);
        pages.enter(BowlForms.BOWLS, "list", BowlPages::list);
        pages.enter(BowlForms.BOWLS, "tag", BowlPages::tag);
    }

    private static String at(PageAsk ask, String press) {
        return LIST + "/" + ask.id() + "/" + press;
    }

    private static Form mix(PageAsk ask) {
        return shelf(ask, new FormDraft(ask, "bowls"), MixedBefore.asked(ask))
                .group("")
                .choice("reason", BowlReason.class, BowlReason.FIRST)
                .list("visit", Choices.visits(ask), "")
                .preview(Judging.mixing(ask, LIST))
                .whenAndWho()
                .form(LIST, LIST);
    }

    private static Form recipe(PageAsk ask) {
        var lies = bowl(ask).map(Bowl::portions).orElse(List.of());
        return shelf(ask, new FormDraft(ask, "bowls.recipe"), lies).form(at(ask, "recipe"), LIST);
    }

    /** A box for the grams of each product: nothing is typed but numbers. */
    static FormDraft shelf(PageAsk ask, FormDraft draft, List<Portion> lies) {
        var rows = new ShelfRows(ask.typed());
        for (var kind : Kind.values()) {
            draft.group(ask.moment().say(kind));
            for (var product : ask.salon().products()) {
                if (product.directions().kind() == kind && isShown(product, lies, rows)) {
                    portion(ask, draft, rows.of(product), product, grams(lies, product));
                }
            }
        }
        return draft;
    }

    /** What is not offered any more still lies where it lies. */
    private static boolean isShown(Product product, List<Portion> lies, ShelfRows rows) {
        return !product.withdrawn()
                || rows.isTyped(product)
                || lies.stream().anyMatch(portion -> portion.product().equals(product.id()));
    }

    private static void portion(PageAsk ask, FormDraft draft, int row, Product product, String grams) {
        var name = "portions." + row;
        draft.hidden(name + ".product", Choices.number(product.id().value()))
                .number(
                        name + ".grams",
                        ask.say("form.grams", product.directions().name()),
                        grams);
    }

    private static String grams(List<Portion> lies, Product product) {
        return lies.stream()
                .filter(portion -> portion.product().equals(product.id()))
                .findFirst()
                .map(portion -> portion.grams().amount().toPlainString())
                .orElse("");
    }

    private static Form divide(PageAsk ask) {
        var reason = bowl(ask).map(Bowl::reason).orElse(BowlReason.FIRST);
        return new FormDraft(ask, "bowls.divide")
                .choice("reason", BowlReason.class, reason)
                .list("visit", Choices.visits(ask), "")
                .group(ask.say("form.when"))
                .number("minutesAgo", "")
                .form(at(ask, "divide"), LIST);
    }

    private static Optional<Bowl> bowl(PageAsk ask) {
        return ask.moment().floor().bowl(new BowlId(ask.id()));
    }

    private static SheetPage list(PageAsk ask) {
        var rows = Choices.standing(ask).map(bowl -> row(ask, bowl)).toList();
        var bench = Press.opens(ask.say("form.mixtures"), "", "/mixtures").as(Press.Weight.MAIN);
        var title = ask.say("sheet.bowls");
        var recipes = Press.opens(ask.say("sheet.recipes"), "", RecipePages.RECIPES);
        var standing = new Part(
                rows.isEmpty() ? ask.say("sheet.bowls.none") : "",
                rows,
                List.of(bench, recipes, Press.opens(ask.say("use.title"), "", "/use")));
        var untold = untold(ask);
        var gone = new Part(ask.say("left.untold"), untold, List.of());
        var parts = untold.isEmpty() ? List.of(standing) : List.of(standing, gone);
        return new SheetPage(ask.shell(title, Nav.BOWLS), title, "", parts, List.of());
    }

    /** The last few that were thrown away without a word: nobody remembers more. */
    private static List<Row> untold(PageAsk ask) {
        return ask.moment().floor().day().bowls().stream()
                .filter(bowl -> bowl.isThrownAway() && bowl.left() == null)
                .sorted(Comparator.comparing(
                        Bowl::thrownAwayAt, Comparator.nullsFirst(Comparator.<Instant>reverseOrder())))
                .limit(MOST_UNTOLD)
                .map(bowl -> LeftPages.row(
                        ask,
                        bowl,
                        List.of(Press.opens(
                                ask.say("left.title"),
                                "",
                                LeftPages.at(bowl.id().value())))))
                .toList();
    }

    private static View tag(PageAsk ask) {
        return bowl(ask)
                .<View>map(bowl -> new BowlTelling(ask, bowl)
                        .page(Stream.concat(presses(ask, bowl).stream(), again(ask, bowl).stream())
                                .toList()))
                .orElseGet(() -> list(ask));
    }

    private static Row row(PageAsk ask, Bowl bowl) {
        var presses = new ArrayList<>(presses(ask, bowl));
        presses.add(Press.opens(
                ask.say("form.bowls.throw-away"), "", LeftPages.at(bowl.id().value())));
        presses.add(
                0, Press.opens(ask.say("bowl.tag"), "", LIST + "/" + bowl.id().value()));
        return new Row(ask.moment().clock(bowl.mixedAt()), Choices.bowl(ask, bowl), detail(ask, bowl), false, presses);
    }

    private static List<Press> presses(PageAsk ask, Bowl bowl) {
        var base = LIST + "/" + bowl.id().value() + "/";
        var presses = new ArrayList<Press>();
        if (bowl.isThrownAway()) {
            return presses;
        }
        whom(ask, bowl)
                .ifPresent(visit -> presses.add(Press.opens(
                        ask.say("form.visits.put-on"),
                        "",
                        "/visits/" + visit.id().value() + "/put-on?bowl="
                                + bowl.id().value())));
        if (!ask.moment().floor().isTouched(bowl.id())) {
            presses.add(Press.opens(ask.say("form.bowls.divide"), "", base + "divide"));
        }
        presses.add(Press.opens(ask.say("form.bowls.recipe"), "", base + "recipe"));
        return presses;
    }

    /** The same again, and the recipe to keep. */
    private static List<Press> again(PageAsk ask, Bowl bowl) {
        var again = new ArrayList<>(MixedBefore.of(bowl).presses(ask, "bowl.again"));
        if (bowl.isRecipeKnown()) {
            again.add(Press.opens(
                    ask.say("form.recipes"),
                    "",
                    "/recipes/new?bowl=" + bowl.id().value()));
        }
        return again;
    }

    static Optional<Visit> whom(PageAsk ask, Bowl bowl) {
        return Optional.ofNullable(bowl.forVisit())
                .flatMap(ask.moment().floor()::visit)
                .filter(Visit::isOpen);
    }

    private static String detail(PageAsk ask, Bowl bowl) {
        var whom = whom(ask, bowl).map(visit -> ask.moment().label(visit)).orElse(ask.say("choice.nobody"));
        return ask.moment().say(bowl.reason()) + " · " + whom;
    }
}
