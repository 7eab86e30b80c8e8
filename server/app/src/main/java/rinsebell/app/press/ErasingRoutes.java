package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.desk.FloorDesk;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.db.Clients;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.form.ClientForms;

/** Erases the record of somebody who comes no more, or asks for it; a page asks once more before it sends this. */
public final class ErasingRoutes implements Routes {
    private final Clients clients;
    private final FloorDesk desk;
    private final ApiPresses programs;

    public ErasingRoutes(Clients clients, FloorDesk desk, ApiPresses programs) {
        this.clients = clients;
        this.desk = desk;
        this.programs = programs;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/clients/{id}/erase", this::fromPage);
        routes.post("/api/clients/{id}/erase", this::fromProgram);
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
        if (desk.snapshot().floor().openVisits().stream()
                .anyMatch(visit -> client.equals(visit.stay().client()))) {
            throw Problem.of(ProblemCode.CLIENT_IS_HERE).thrown();
        }
        desk.forget(clients.erase(client).orElseThrow(Numbered::nowhere));
    }
}
