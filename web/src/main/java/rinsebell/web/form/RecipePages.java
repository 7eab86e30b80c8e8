package rinsebell.web.form;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Field;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.View;

/** Pages about recipes that the salon keeps: of the house, and of those who come again. */
final class RecipePages {
    static final String RECIPES = "/recipes";
    private static final String FILE = "/recipe-file";

    private final PageAsk ask;

    private RecipePages(PageAsk ask) {
        this.ask = ask;
    }

    static void enter(FormPages pages) {
        pages.enter(RecipeForms.RECIPES, "list", ask -> new RecipePages(ask).list());
        pages.enter(RecipeForms.RECIPES, Presses.PLAIN, Nav.BOWLS, ask -> new RecipePages(ask.opened()).keep());
        pages.enter(RecipeForms.RECIPES, RecipeForms.REVISE, Nav.BOWLS, ask -> new RecipePages(ask).revise());
        pages.enter(RecipeForms.RECIPES, "one", ask -> new RecipePages(ask).one());
        pages.enter(RecipeFile.RESOURCE, Presses.PLAIN, Nav.BOWLS, ask -> new RecipePages(ask).takeIn());
    }

    /** What is kept for somebody, or for the house, and still mixed by: to its page, for a visit where one is named. */
    static List<Row> rows(PageAsk ask, @Nullable ClientId owner, @Nullable VisitId whom) {
        return ask.salon().recipesOf(owner).stream()
                .filter(recipe -> !recipe.dropped())
                .map(recipe -> new RecipePages(ask).row(recipe, whom))
                .toList();
    }

    private Row row(KeptRecipe recipe, @Nullable VisitId whom) {
        var visit = whom == null ? "" : "?visit=" + whom.value();
        var open = Press.opens(ask.say("sheet.recipes.open", name(recipe)), "", at(recipe) + visit);
        return new Row("", name(recipe), portions(recipe.newest()), recipe.dropped(), List.of(open));
    }

    private static String at(KeptRecipe recipe) {
        return RECIPES + "/" + recipe.id().value();
    }

    private String name(KeptRecipe recipe) {
        return name(recipe.newest());
    }

    /** The name of a recipe goes with the record of the client whose it is. */
    private String name(KeptRecipe.Version version) {
        var name = ask.moment().texts().apply(version.name());
        return name.isEmpty() ? ask.say("sheet.recipes.unnamed") : name;
    }

    private String portions(KeptRecipe.Version version) {
        return new FactDetail(ask.moment()).recipe(version.portions()).collect(Collectors.joining());
    }

    private View list() {
        var title = ask.say("sheet.recipes");
        var house = ask.salon().recipesOf(null).stream()
                .map(recipe -> row(recipe, null))
                .toList();
        var presses = List.of(
                Press.opens(ask.say("sheet.recipes.new"), "", RECIPES + "/new").as(Press.Weight.MAIN),
                Press.opens(ask.say("form.recipe-file"), "", FILE),
                Press.opens(ask.say("sheet.recipes.file"), "", "/api" + FILE));
        var part = new Part(ask.say(house.isEmpty() ? "sheet.recipes.none" : "sheet.recipes.house"), house, presses);
        return new SheetPage(
                ask.shell(title, Nav.BOWLS), title, ask.say("sheet.recipes.intro"), List.of(part), List.of());
    }

    private Optional<KeptRecipe> recipe() {
        return ask.salon().recipe(new RecipeId(ask.id()));
    }

    private View one() {
        return recipe().<View>map(this::one).orElseGet(this::list);
    }

    private View one(KeptRecipe recipe) {
        var whom = visit().map(Visit::id).orElse(null);
        var before =
                new MixedBefore("recipe=" + recipe.id().value(), recipe.newest().portions(), whom);
        var again = before.presses(ask, "sheet.recipes.mix");
        var parts = List.of(
                new Part(
                        again.isEmpty() ? ask.say("sheet.recipes.not_now") : "",
                        List.of(),
                        recipe.dropped() ? List.of() : again),
                new Part(ask.say("sheet.recipes.versions"), versions(recipe), List.of()),
                new Part("", List.of(), changes(recipe)));
        var owner = recipe.owner().map(this::label).orElse(ask.say("sheet.recipes.of_house"));
        var intro = owner + " · " + portions(recipe.newest());
        return new SheetPage(ask.shell(name(recipe), Nav.BOWLS), name(recipe), intro, parts, List.of());
    }

    private String label(ClientId client) {
        return ask.clients().card(client).map(ClientCard::label).orElse(ask.say("sheet.clients.erased"));
    }

    private List<Press> changes(KeptRecipe recipe) {
        var dropped = recipe.dropped();
        return List.of(
                Press.opens(ask.say("form.recipes.revise"), "", at(recipe) + "/" + RecipeForms.REVISE),
                Press.opens(
                        ask.say("sheet.recipes.one_file"),
                        "",
                        "/api" + FILE + "?recipe=" + recipe.id().value()),
                Press.sends(
                        ask.say(dropped ? "form.recipes.again" : "form.recipes.drop"),
                        "",
                        at(recipe) + "/" + RecipeForms.DROP,
                        new Press.Hidden("dropped", dropped ? "no" : "yes")));
    }

    /** The newest first: when, who, and what it was. */
    private List<Row> versions(KeptRecipe recipe) {
        var all = recipe.versions();
        return IntStream.range(0, all.size())
                .mapToObj(i -> version(all.get(all.size() - 1 - i), all.size() - i))
                .toList();
    }

    private Row version(KeptRecipe.Version version, int number) {
        var fact = ask.moment().floor().fact(version.name().seq());
        var by = fact.map(one -> ask.moment().name(one.by())).filter(name -> !name.isEmpty());
        var at = fact.map(one -> one.happened().atZone(ask.salon().zone()).toLocalDate() + " "
                + ask.moment().clock(one.happened()));
        var what = Stream.of(Optional.of(ask.say("sheet.recipes.version", number)), Optional.of(name(version)), by)
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" · "));
        return new Row(at.orElse(""), what, portions(version), false, List.of());
    }

    private Form keep() {
        var draft = new FormDraft(ask, "recipes").text(RecipeForms.NAME, "");
        return BowlPages.shelf(ask, whose(draft), given()).form(RECIPES, RECIPES);
    }

    private Form revise() {
        var newest = recipe().map(KeptRecipe::newest);
        var name = newest.map(this::name).orElse("");
        var draft = new FormDraft(ask, "recipes.revise").text(RecipeForms.NAME, name);
        var at = RECIPES + "/" + ask.id();
        var lies = newest.map(KeptRecipe.Version::portions).orElse(List.of());
        return BowlPages.shelf(ask, draft, lies).form(at + "/" + RecipeForms.REVISE, at);
    }

    private Form takeIn() {
        var draft = new FormDraft(ask, "recipe-file")
                .plain(Field.Kind.FILE, RecipeFile.DOCUMENT, ask.say("field.document"), "");
        return whose(draft).form(FILE, RECIPES);
    }

    /** The house's, unless it is about somebody. */
    private FormDraft whose(FormDraft draft) {
        owner().ifPresent(card -> {
            var house = new Choice("", ask.say("sheet.recipes.of_house"));
            var client = new Choice(Choices.number(card.id().value()), card.label());
            draft.tiles(RecipeForms.CLIENT, ask.say("field.owner"), List.of(house, client), client.value());
        });
        return draft;
    }

    private Optional<ClientCard> owner() {
        var chosen = ask.number(RecipeForms.CLIENT).map(ClientId::new);
        return chosen.or(this::whoseBowl).flatMap(ask.clients()::card);
    }

    private Optional<ClientId> whoseBowl() {
        return visit().flatMap(visit -> Optional.ofNullable(visit.stay().client()));
    }

    private Optional<Visit> visit() {
        var whom = bowl().flatMap(bowl -> Optional.ofNullable(bowl.forVisit()));
        return whom.or(() -> ask.number("visit").map(VisitId::new))
                .flatMap(ask.moment().floor()::visit);
    }

    private Optional<Bowl> bowl() {
        return ask.number("bowl").map(BowlId::new).flatMap(ask.moment().floor()::bowl);
    }

    /** What a bowl was made of, or what the bench came to. */
    private List<Portion> given() {
        return bowl().map(Bowl::portions)
                .or(() -> new MixtureTelling(ask).reckoned().map(one -> Weighed.portions(one.weighed(), ask.salon())))
                .orElse(List.of());
    }
}
