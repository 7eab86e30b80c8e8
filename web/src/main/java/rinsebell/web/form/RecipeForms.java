package rinsebell.web.form;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Command;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.KeepRecipes;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.ClientId;

/** Presses about recipes that the salon keeps. */
final class RecipeForms {
    static final String RECIPES = "recipes";
    static final String REVISE = "revise";
    static final String DROP = "drop";
    static final String CLIENT = "client";
    static final String NAME = "name";
    static final int LONGEST_NAME = 60;

    private RecipeForms() {}

    static void enter(Presses presses) {
        presses.enter(RECIPES, Presses.PLAIN, PressForm.asking(RecipeForms::keep));
        presses.enter(RECIPES, REVISE, PressForm.asking(RecipeForms::revise));
        presses.enter(RECIPES, DROP, PressForm.asking(RecipeForms::drop));
        RecipeFile.enter(presses);
    }

    private static Command keep(Entries entries) {
        var client = client(entries);
        var name = entries.neededText(NAME, LONGEST_NAME);
        named(entries, client, name).ifPresent(one -> entries.fault(NAME, Fault.TAKEN, name));
        return written(entries, null, client, name);
    }

    private static Command revise(Entries entries) {
        var id = new RecipeId(entries.id());
        var client =
                entries.floor().salon().recipe(id).flatMap(KeptRecipe::owner).orElse(null);
        if (client != null && entries.card(client).isEmpty()) {
            // Nobody's record would lead to the new name, so nothing would ever erase it.
            entries.fault(NAME, Fault.NOT_KNOWN);
        }
        var name = entries.neededText(NAME, LONGEST_NAME);
        named(entries, client, name)
                .filter(one -> !one.id().equals(id))
                .ifPresent(one -> entries.fault(NAME, Fault.TAKEN, name));
        return written(entries, id, client, name);
    }

    private static Command written(Entries entries, @Nullable RecipeId known, @Nullable ClientId client, String name) {
        var weighed = BowlForms.neededPortions(entries);
        return new KeepRecipes(List.of(new KeepRecipes.Written(known, client, name, weighed)));
    }

    private static Command drop(Entries entries) {
        var dropped = entries.needed("dropped", entries.yesNo("dropped"), true);
        return new Arrange(new SalonEvent.RecipeDropped(new RecipeId(entries.id()), dropped), null);
    }

    /** Whose it is; null for the house's own. */
    static @Nullable ClientId client(Entries entries) {
        return entries.number(CLIENT)
                .map(ClientId::new)
                .flatMap(id -> entries.known(CLIENT, entries.card(id).map(ClientCard::id), Fault.NOT_KNOWN))
                .orElse(null);
    }

    /** The recipe of that name that one owner has, capitals or not; two of one name would be taken for each other. */
    static Optional<KeptRecipe> named(Entries entries, @Nullable ClientId client, String name) {
        return entries.floor().salon().recipesOf(client).stream()
                .filter(recipe -> !recipe.dropped())
                .filter(recipe -> entries.written(recipe.newest().name()).equalsIgnoreCase(name))
                .findFirst();
    }
}
