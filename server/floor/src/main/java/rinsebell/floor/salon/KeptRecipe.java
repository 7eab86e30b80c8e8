package rinsebell.floor.salon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.TextId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.visit.ClientId;

/**
 * A recipe that the salon gave a name, to mix by it again.
 *
 * @param client whose it is; null for the house's own
 * @param versions what it was and is, the newest last; at least one
 * @param dropped whether it is no longer mixed by
 */
public record KeptRecipe(RecipeId id, @Nullable ClientId client, List<Version> versions, boolean dropped) {
    public KeptRecipe {
        versions = List.copyOf(versions);
        if (versions.isEmpty()) {
            throw new IllegalArgumentException("a recipe is of something: " + id);
        }
    }

    /**
     * What a recipe was from one fact on.
     *
     * @param name where its name stands
     * @param portions as they would be weighed for one bowl
     */
    public record Version(TextId name, List<Portion> portions) {
        public Version {
            portions = List.copyOf(portions);
        }
    }

    public Version newest() {
        return versions.get(versions.size() - 1);
    }

    public Optional<ClientId> owner() {
        return Optional.ofNullable(client);
    }

    KeptRecipe revised(Version next) {
        var all = new ArrayList<>(versions);
        all.add(next);
        return new KeptRecipe(id, client, all, dropped);
    }

    KeptRecipe drop(boolean gone) {
        return new KeptRecipe(id, client, versions, gone);
    }
}
