package rinsebell.floor.command;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.ClientId;

/**
 * Keeps recipes under names, all of them or none.
 *
 * @param recipes none when all that was wanted is kept already
 */
public record KeepRecipes(List<Written> recipes) implements Command {
    public KeepRecipes {
        recipes = List.copyOf(recipes);
    }

    /**
     * A recipe, as it was written down.
     *
     * @param known which one it is the new version of; null for a new recipe
     * @param client whose a new one is; null for the house's own
     * @param name the salon's word for it
     * @param weighed what goes into one bowl; never empty
     */
    public record Written(
            @Nullable RecipeId known, @Nullable ClientId client, String name, List<Weighed> weighed) {
        public Written {
            weighed = List.copyOf(weighed);
        }

        private SalonEvent event(Floor floor) {
            var portions = Weighed.portions(weighed, floor.salon());
            return known == null
                    ? new SalonEvent.RecipeKept(client, portions)
                    : new SalonEvent.RecipeRevised(known, portions);
        }

        private List<Reason> objections(Floor floor, Asked asked) {
            var isOnShelf = weighed.stream()
                    .allMatch(one -> floor.salon().product(one.product()).isPresent());
            return Optional.of(Reason.unless(isOnShelf, ReasonCode.NOT_KNOWN))
                    .filter(some -> !some.isEmpty())
                    .orElseGet(() -> event(floor).objections(floor, asked.now()));
        }
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        var objections = recipes.stream()
                .flatMap(one -> one.objections(floor, asked).stream())
                .toList();
        return new Verdict(asked)
                .objections(objections)
                .decide(() -> recipes.stream()
                        .map(one -> new Draft(Stream.SALON, asked.now(), one.event(floor), one.name()))
                        .toList());
    }
}
