package rinsebell.web.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.command.KeepRecipes;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ClientId;

/**
 * Takes recipes in that another salon, or this one, wrote into a file: JSON, as its published schema has it. A recipe whose
 * name is known becomes a new version of that one, unless it is the same; a file taken in twice changes nothing.
 */
public final class RecipeFile {
    /** Says what kind of file it is, and by which layout. */
    public static final String KIND = "rinsebell-recipes-1";

    static final String RESOURCE = "recipe-file";
    static final String DOCUMENT = "document";
    static final int MOST_RECIPES = 100;
    private static final int MOST_PORTIONS = 30;
    private static final int LONGEST_ADDRESS = 200;
    private static final KeepRecipes NOTHING = new KeepRecipes(List.of());

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private final Entries entries;
    private final @Nullable ClientId client;
    private final Set<String> names = new HashSet<>();

    private RecipeFile(Entries entries, @Nullable ClientId client) {
        this.entries = entries;
        this.client = client;
    }

    static void enter(Presses presses) {
        presses.enter(RESOURCE, Presses.PLAIN, RecipeFile::read);
    }

    /** A program sends the file itself; on a page it stands in a box. */
    private static Reading read(Target target, Fields fields) {
        var entries = new Entries(target, fields);
        return entries.reading(
                entries.everyEntryCounts() ? new RecipeFile(entries, null).recipes() : pasted(entries, target));
    }

    private static KeepRecipes pasted(Entries entries, Target target) {
        var client = RecipeForms.client(entries);
        var document = entries.all(DOCUMENT).stream().findFirst().filter(text -> !Typed.isBlank(text));
        var fields = entries.needed(DOCUMENT, document, "{}");
        return parsed(fields)
                .map(tree -> new Entries(target, tree))
                .map(inner -> document.isEmpty() ? NOTHING : inside(entries, inner, client))
                .orElseGet(() -> {
                    entries.fault(DOCUMENT, Fault.NOT_A_RECIPE_FILE);
                    return NOTHING;
                });
    }

    /** What is wrong in the file is wrong with the box in which it stands. */
    private static KeepRecipes inside(Entries entries, Entries inner, @Nullable ClientId client) {
        var recipes = new RecipeFile(inner, client).recipes();
        inner.errors().forEach(error -> entries.fault(DOCUMENT, Fault.IN_FILE, new FilePlace(error.field()), error));
        return recipes;
    }

    private static Optional<Fields> parsed(String document) {
        try {
            var tree = JSON.readTree(document);
            return tree != null && tree.isObject()
                    ? Optional.of(Fields.ofTree(JSON.convertValue(tree, Map.class)))
                    : Optional.empty();
        } catch (JsonProcessingException | NumberFormatException e) {
            // A number that has no end of digits is no JSON to the reader, yet it has a name of its own for that.
            return Optional.empty();
        }
    }

    private KeepRecipes recipes() {
        var kind = entries.needed("kind", entries.value("kind"), KIND);
        if (!kind.equals(KIND)) {
            entries.fault("kind", Fault.NOT_A_CHOICE);
        }
        var all = new ArrayList<KeepRecipes.Written>();
        for (var i = 0; i < MOST_RECIPES && isThere("recipes." + i); i++) {
            recipe("recipes." + i).ifPresent(all::add);
        }
        if (isThere("recipes." + MOST_RECIPES)) {
            entries.fault("recipes", Fault.TOO_MANY, MOST_RECIPES);
        }
        entries.all("recipes");
        entries.needed("recipes", Optional.of(true).filter(any -> isThere("recipes.0")), true);
        entries.text("$schema", LONGEST_ADDRESS);
        return new KeepRecipes(all);
    }

    private boolean isThere(String row) {
        return entries.names().stream().anyMatch(name -> name.startsWith(row + "."));
    }

    /** Empty when it is kept already, just so. */
    private Optional<KeepRecipes.Written> recipe(String row) {
        var name = entries.neededText(row + ".name", RecipeForms.LONGEST_NAME);
        if (!names.add(name.toLowerCase(Locale.ROOT)) && !name.isEmpty()) {
            entries.fault(row + ".name", Fault.TAKEN, name);
        }
        var weighed = new ArrayList<Weighed>();
        for (var i = 0; i < MOST_PORTIONS && isThere(row + ".portions." + i); i++) {
            weighed.add(portion(row + ".portions." + i));
        }
        if (isThere(row + ".portions." + MOST_PORTIONS)) {
            entries.fault(row + ".portions", Fault.TOO_MANY, MOST_PORTIONS);
        }
        entries.needed(row + ".portions", Optional.of(weighed).filter(some -> !some.isEmpty()), weighed);
        var known = RecipeForms.named(entries, client, name);
        return known.filter(recipe -> isSame(recipe, weighed)).isPresent()
                ? Optional.empty()
                : Optional.of(new KeepRecipes.Written(known.map(KeptRecipe::id).orElse(null), client, name, weighed));
    }

    private Weighed portion(String row) {
        var grams = entries.decimal(row + ".grams", BowlForms.GRAMS).map(Grams::new);
        var product =
                entries.text(row + ".product", Entries.LONGEST_LABEL).flatMap(name -> product(row + ".product", name));
        return new Weighed(
                entries.needed(row + ".product", product, new ProductId(0)),
                entries.needed(row + ".grams", grams, Grams.NONE));
    }

    /** By its name, for numbers differ from salon to salon; one that is offered before one that no longer is. */
    private Optional<ProductId> product(String field, String name) {
        var found = entries.floor().salon().products().stream()
                .filter(product -> product.directions().name().equalsIgnoreCase(name))
                .min(Comparator.comparing(Product::withdrawn))
                .map(Product::id);
        if (found.isEmpty()) {
            entries.fault(field, Fault.NOT_ON_SHELF, name);
        }
        return found;
    }

    private static boolean isSame(KeptRecipe recipe, List<Weighed> weighed) {
        return recipe.newest().portions().stream()
                .map(portion -> new Weighed(portion.product(), portion.grams()))
                .collect(Collectors.toSet())
                .equals(Set.copyOf(weighed));
    }
}
