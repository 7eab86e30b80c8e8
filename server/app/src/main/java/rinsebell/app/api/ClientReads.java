package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
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
        routes.get("/api/clients", this::search, Matter.HISTORY);
        routes.get("/api/clients/{id}", this::card, Matter.HISTORY);
    }

    private void search(Context ctx) {
        var letters = Optional.ofNullable(ctx.queryParam("letters")).orElse("");
        ctx.json(
                clients.search(letters, MOST).stream().map(ClientJson.Found::of).toList());
    }

    private void card(Context ctx) {
        ctx.json(clients.card(new ClientId(Numbered.at(ctx, "id")))
                .map(ClientJson::of)
                .orElseThrow(Numbered::nowhere));
    }
}
