package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.PageRoutes;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.visit.ClientId;

/** Reads of the records of people who come again. */
public final class ClientReads implements Routes {
    private static final int MOST = 50;

    private final ClientBook clients;

    public ClientReads(ClientBook clients) {
        this.clients = clients;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/clients", this::search);
        routes.get("/api/clients/{id}", this::card);
    }

    private void search(Context ctx) {
        var letters = Optional.ofNullable(ctx.queryParam("letters")).orElse("");
        ctx.json(
                clients.search(letters, MOST).stream().map(ClientJson.Found::of).toList());
    }

    private void card(Context ctx) {
        ctx.json(PageRoutes.number(ctx.pathParam("id"))
                .map(ClientId::new)
                .flatMap(clients::card)
                .map(ClientJson::of)
                .orElseThrow(() -> Problem.of(ProblemCode.NOT_FOUND).thrown()));
    }
}
