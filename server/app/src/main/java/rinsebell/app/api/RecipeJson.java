package rinsebell.app.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.web.board.Moment;

/**
 * A recipe that the salon keeps.
 *
 * @param client whose it is; absent for the house's own
 * @param name empty when it was erased
 * @param version how many times it was written
 * @param dropped whether it is no longer mixed by
 * @param portions of the newest version
 */
record RecipeJson(
        long id,
        @Nullable Long client,
        String name,
        int version,
        boolean dropped,
        List<BowlJson.PortionJson> portions) {
    static RecipeJson of(KeptRecipe recipe, Moment moment) {
        return new RecipeJson(
                recipe.id().value(),
                recipe.owner().map(client -> client.value()).orElse(null),
                moment.texts().apply(recipe.newest().name()),
                recipe.versions().size(),
                recipe.dropped(),
                recipe.newest().portions().stream()
                        .map(portion -> BowlJson.PortionJson.of(portion, moment.floor()))
                        .toList());
    }
}
