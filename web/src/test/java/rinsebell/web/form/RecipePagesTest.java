package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Scoop.g;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.command.KeepRecipes;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.visit.ClientId;

/** Recipes that the salon keeps, on pages. In these tests the text of fact 7 is "text 7". */
class RecipePagesTest {
    private static final String PRESS = "0123456789abcdef";

    private final PageTable pages = new PageTable();
    private final PressTable table = pages.table;

    @Test
    void aBowlIsKeptAsItWasWeighed() {
        var html = pages.html("recipes", "", 0, Fields.of("bowl", String.valueOf(table.bowl.value())));
        assertThat(PageTable.boxes(html)).containsExactly("mild cream, g: 60", "developer 20, g: 60");
    }

    @Test
    void whatTheBenchCameToIsKept() {
        var typed = Fields.of(
                "products.0.product",
                number(Shelf.POWDER),
                "mixture",
                "free hand",
                "developer",
                number(Shelf.DEV30),
                "grams",
                "70",
                "press",
                PRESS);
        // 60 powder to 45 developer, common practice, no source: 70 g are 40 and 30.
        var opened = pages.view(table.floor(), new Presses.Name("recipes", ""), 0, typed, List.of());
        assertThat(PageTable.boxes(pages.html(opened))).containsExactly("powder, g: 40", "developer 30, g: 30");
    }

    @Test
    void twoOfOneOwnerHaveNoNameInCommon() {
        var house = keeps(null);
        var name = "text " + house.value();
        assertThat(PressTable.faults(kept("name", name.toUpperCase(java.util.Locale.ROOT))))
                .containsEntry("name", Fault.TAKEN);
        assertThat(written(kept("name", name, "client", "7")).client()).isEqualTo(FewClients.KNOWN);
        assertThat(written(revised(house, name)).known()).isEqualTo(house);
        var other = keeps(null);
        assertThat(PressTable.faults(revised(other, name))).containsEntry("name", Fault.TAKEN);
        drops(house);
        assertThat(written(revised(other, name)).known()).isEqualTo(other);
    }

    @Test
    void aRecipeIsOfSomethingAndOfSomebodyKnown() {
        var nothing = table.read("recipes", "", 0, Fields.of("press", PRESS, "client", "8"));
        assertThat(PressTable.faults(nothing))
                .containsEntry("name", Fault.MISSING)
                .containsEntry("client", Fault.NOT_KNOWN)
                .containsEntry("portions.0.grams", Fault.MISSING);
    }

    /** Nothing that was typed is lost when another product is taken in, or something was wrong. */
    @Test
    void whatWasTypedStays() {
        var typed = Fields.of(
                "press",
                PRESS,
                "name",
                "<i>Ebb</i>",
                "portions.0.product",
                number(Shelf.MILD_CREAM),
                "portions.0.grams",
                "many");
        assertThat(pages.html("recipes", "", 0, typed))
                .contains("value=\"&lt;i>Ebb&lt;/i>\"")
                .containsPattern("name=\"portions.0.grams\"[^>]* value=\"many\"")
                .contains("This is not a number.");
    }

    /** Their own before the house's, and only what is still mixed by. */
    @Test
    void theBenchBeginsWithWhatIsKept() {
        var house = keeps(null);
        var dropped = keeps(null);
        var theirs = keeps(FewClients.KNOWN);
        drops(dropped);
        var nobody = pages.html("mixtures", "", 0, Fields.NONE);
        assertThat(nobody).contains("/recipes/" + house.value() + "\"").doesNotContain("/recipes/" + theirs.value());
        assertThat(nobody).doesNotContain("/recipes/" + dropped.value());
        table.story.tells(
                rinsebell.floor.Stream.visit(table.visit),
                new rinsebell.floor.visit.StayEvent.ClientLinked(FewClients.KNOWN));
        var visit = String.valueOf(table.visit.value());
        var head = pages.html("mixtures", "", 0, Fields.of("visit", visit));
        assertThat(head.indexOf("/recipes/" + theirs.value() + "?visit=" + visit))
                .isBetween(1, head.indexOf("/recipes/" + house.value() + "?visit=" + visit));
        assertThat(pages.html("recipes", "one", theirs.value(), Fields.of("visit", visit)))
                .contains("grams=120&amp;visit=" + visit)
                .contains("grams=60&amp;visit=" + visit)
                .contains("grams=180&amp;visit=" + visit);
    }

    @Test
    void whatIsNotOnTheShelfAnyMoreIsSaid() {
        var recipe = keeps(null);
        assertThat(pages.html("recipes", "one", recipe.value(), Fields.NONE)).contains("Mix half of it");
        var cream = table.story.product(Shelf.MILD_CREAM);
        table.story.tells(new rinsebell.floor.Stream.OfSalon(), new SalonEvent.ProductOffered(cream, false));
        assertThat(pages.html("recipes", "one", recipe.value(), Fields.NONE))
                .contains("no longer on the shelf")
                .doesNotContain("Mix half of it");
    }

    /** In a box on a page a file is what it is for a program; what is wrong in it stands at the box. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "                                                                              | MISSING",
                "{'kind'                                                                       | NOT_A_RECIPE_FILE",
                "[1]                                                                           | NOT_A_RECIPE_FILE",
                "{'kind':'rinsebell-recipes-1','recipes':[]} x                       | NOT_A_RECIPE_FILE",
                "{'kind':'rinsebell-recipes-1','kind':'rinsebell-recipes-1','recipes':[]} | NOT_A_RECIPE_FILE",
                "{'kind':'rinsebell-recipes-1','recipes':[{'name':'A','portions':[{'product':'nothing','grams':9}]}]} | IN_FILE",
                "{'kind':'rinsebell-recipes-1','recipes':[{'name':'A','portions':[{'product':'powder','grams':1e9}]}]} | IN_FILE",
                "{'kind':'rinsebell-recipes-1','recipes':[{'name':'A','portions':[]}]} | IN_FILE"
            })
    void aBadFileIsSaidInWords(@Nullable String file, Fault fault) {
        var typed = Fields.of("press", PRESS, "document", file == null ? "" : file.replace('\'', '"'));
        assertThat(PressTable.faults(table.read("recipe-file", "", 0, typed))).containsEntry("document", fault);
        var html = pages.html("recipe-file", "", 0, typed);
        assertThat(html).contains("id=\"document-problem\"");
    }

    @Test
    void whatIsWrongInAFileIsNamed() {
        var file = "{\"kind\":\"rinsebell-recipes-1\",\"recipes\":[{\"name\":\"A\",\"portions\":"
                + "[{\"product\":\"nothing\",\"grams\":0}]}]}";
        assertThat(pages.html("recipe-file", "", 0, Fields.of("press", PRESS, "document", file)))
                .contains("Recipe 1, portion 1, the product: Nothing named nothing stands on the shelf here.")
                .contains("Recipe 1, portion 1, the grams: At least 0.1, please.");
    }

    @Test
    void aFileIsTakenInForAClient() {
        var file = "{\"kind\":\"rinsebell-recipes-1\",\"recipes\":[{\"name\":\"A\",\"portions\":"
                + "[{\"product\":\"powder\",\"grams\":60.5}]}]}";
        var taken = written(table.read("recipe-file", "", 0, Fields.of("document", file, "client", "7")));
        assertThat(taken.client()).isEqualTo(FewClients.KNOWN);
        assertThat(taken.weighed().get(0).grams()).hasToString("60.5 g");
    }

    private Reading kept(String... more) {
        return table.read("recipes", "", 0, with(more));
    }

    private Reading revised(RecipeId recipe, String name) {
        return table.read("recipes", "revise", recipe.value(), with("name", name));
    }

    private Fields with(String... more) {
        return Fields.of(more).orElse(Fields.of("portions.0.product", number(Shelf.POWDER), "portions.0.grams", "60"));
    }

    private static KeepRecipes.Written written(Reading reading) {
        return ((KeepRecipes) PressTable.command(reading)).recipes().get(0);
    }

    private RecipeId keeps(@Nullable ClientId client) {
        var mixed = table.story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
        var portions = table.floor().bowl(mixed);
        return new RecipeId(table.story.tells(
                new rinsebell.floor.Stream.OfSalon(),
                new SalonEvent.RecipeKept(
                        client, portions.map(bowl -> bowl.portions()).orElse(List.of()))));
    }

    private void drops(RecipeId recipe) {
        table.story.tells(new rinsebell.floor.Stream.OfSalon(), new SalonEvent.RecipeDropped(recipe, true));
    }

    private String number(rinsebell.floor.product.Directions directions) {
        ProductId product = table.story.product(directions);
        return String.valueOf(product.value());
    }
}
