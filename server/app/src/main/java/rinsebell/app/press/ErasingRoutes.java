package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.db.Clients;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.form.ClientForms;

/** Erases the record of somebody who comes no more, or asks for it; a page asks once more before it sends this. */
public final class ErasingRoutes implements Routes {
    private final Clients clients;
    private final Consumer<Set<TextId>> forget;
    private final Supplier<Floor> floor;
    private final ApiPresses programs;

    /**
     * @param forget shows texts no longer, here and on devices
     * @param floor as it is now
     */
    public ErasingRoutes(Clients clients, Consumer<Set<TextId>> forget, Supplier<Floor> floor, ApiPresses programs) {
        this.clients = clients;
        this.forget = forget;
        this.floor = floor;
        this.programs = programs;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/clients/{id}/erase", this::fromPage, Matter.ERASING);
        routes.post("/api/clients/{id}/erase", this::fromProgram, Matter.ERASING);
    }

    private void fromPage(Context ctx) {
        FormBody.read(ctx);
        erase(new ClientId(Numbered.at(ctx, "id")));
        PressRoutes.go(ctx, "/clients");
    }

    private void fromProgram(Context ctx) {
        ApiPresses.pressId(ctx);
        var errors = ClientForms.nothingElse(FormBody.json(ctx));
        if (!errors.isEmpty()) {
            throw programs.wrong(errors);
        }
        erase(new ClientId(Numbered.at(ctx, "id")));
        ctx.status(204);
    }

    /** The label of somebody who sits in a chair is what the floor calls them by. */
    private void erase(ClientId client) {
        if (floor.get().openVisits().stream()
                .anyMatch(visit -> client.equals(visit.stay().client()))) {
            throw Problem.of(ProblemCode.CLIENT_IS_HERE).thrown();
        }
        var erased = clients.erase(client, recipes(client)).orElseThrow(Numbered::nowhere);
        // Each erasing has every device ask for all that it keeps anew.
        if (erased.isNew()) {
            forget.accept(erased.texts());
        }
    }

    /** The names of what was kept for a client may name the client. */
    private Set<TextId> recipes(ClientId client) {
        return floor.get().salon().recipesOf(client).stream()
                .flatMap(recipe -> recipe.versions().stream())
                .map(KeptRecipe.Version::name)
                .collect(Collectors.toUnmodifiableSet());
    }
}
