package rinsebell.app.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.List;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Product;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.salon.Salon;
import rinsebell.web.board.Moment;
import rinsebell.web.form.RecipeFile;

/**
 * Recipes as they go from salon to salon: products by their names, since numbers differ. Its schema is {@code
 * recipe-file.schema.json}.
 *
 * @param schema where the schema is to be had
 */
record RecipeFileJson(@JsonProperty("$schema") String schema, String kind, List<Recipe> recipes) {
    record Recipe(String name, List<Part> portions) {
        static Recipe of(KeptRecipe recipe, Moment moment) {
            return new Recipe(
                    moment.texts().apply(recipe.newest().name()),
                    recipe.newest().portions().stream()
                            .map(portion -> Part.of(portion, moment.floor().salon()))
                            .toList());
        }
    }

    record Part(String product, BigDecimal grams) {
        static Part of(Portion portion, Salon salon) {
            var name = salon.product(portion.product()).map(Product::directions).map(one -> one.name());
            return new Part(name.orElse(""), portion.grams().amount());
        }
    }

    /** What can be read from it again: nothing that was dropped, or whose name was erased. */
    static RecipeFileJson of(List<KeptRecipe> recipes, Moment moment) {
        return new RecipeFileJson(
                RecipeRoutes.SCHEMA,
                RecipeFile.KIND,
                recipes.stream()
                        .filter(recipe -> !recipe.dropped())
                        .map(recipe -> Recipe.of(recipe, moment))
                        .filter(recipe -> !recipe.name().isEmpty())
                        .toList());
    }
}
