package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.db.Clients;
import rinsebell.floor.visit.ClientId;

/** Reads of the records of people who come again. */
public final class ClientReads implements Routes {
    private static final int MOST = 50;

    private final Clients clients;
    private final LiveFloor live;

    public ClientReads(Clients clients, LiveFloor live) {
        this.clients = clients;
        this.live = live;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/clients", ctx -> search(ctx, ""), Matter.HISTORY);
        routes.post(
                "/api/clients/find",
                ctx -> search(ctx, FormBody.json(ctx).first("letters").orElse("")),
                Matter.HISTORY);
        routes.get("/api/clients/{id}", this::card, Matter.HISTORY);
        routes.get("/api/clients/{id}/export", this::everything, Matter.HISTORY);
    }

    private void search(Context ctx, String letters) {
        ctx.json(
                clients.search(letters, MOST).stream().map(ClientJson.Found::of).toList());
    }

    private void card(Context ctx) {
        ctx.json(clients.card(new ClientId(Numbered.at(ctx, "id")))
                .map(ClientJson::of)
                .orElseThrow(Numbered::nowhere));
    }

    /** As a file, whose name names nobody. */
    private void everything(Context ctx) {
        var file = clients.file(new ClientId(Numbered.at(ctx, "id"))).orElseThrow(Numbered::nowhere);
        ctx.header("Cache-Control", "no-store");
        ctx.header(
                "Content-Disposition",
                "attachment; filename=\"rinsebell-client-%d.json\""
                        .formatted(file.id().value()));
        ctx.json(ClientFileJson.of(file, live.moment()));
    }
}
