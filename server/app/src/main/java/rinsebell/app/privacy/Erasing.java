package rinsebell.app.privacy;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import rinsebell.db.Clients;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.visit.ClientId;

/** The one way to erase a record, for a person who asks and for the house's own numbers. */
public final class Erasing {
    private final Clients clients;
    private final Supplier<Floor> floor;
    private final Consumer<Set<TextId>> forget;

    /**
     * @param floor as it is now
     * @param forget shows texts no longer, here and on devices
     */
    public Erasing(Clients clients, Supplier<Floor> floor, Consumer<Set<TextId>> forget) {
        this.clients = clients;
        this.floor = floor;
        this.forget = forget;
    }

    /** Whether they are here: the label of somebody who sits in a chair is what the floor calls them by. */
    public boolean isHere(ClientId client) {
        return floor.get().isHere(client);
    }

    /**
     * Erases a record of somebody who is not here.
     *
     * @return whether anything was there to be erased; empty when the number was never given
     */
    public Optional<Boolean> erase(ClientId client) {
        var erased = clients.erase(client, recipes(client));
        // Each erasing has every device ask for all that it keeps anew.
        erased.filter(Clients.Erased::isNew).ifPresent(gone -> forget.accept(gone.texts()));
        return erased.map(Clients.Erased::isNew);
    }

    /** The names of what was kept for a client may name the client. */
    private Set<TextId> recipes(ClientId client) {
        return floor.get().salon().recipesOf(client).stream()
                .flatMap(recipe -> recipe.versions().stream())
                .map(KeptRecipe.Version::name)
                .collect(Collectors.toUnmodifiableSet());
    }
}
