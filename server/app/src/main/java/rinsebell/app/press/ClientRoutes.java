package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.db.Clients;
import rinsebell.db.DatabaseAway;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.form.Checked;
import rinsebell.web.form.ClientForms;
import rinsebell.web.form.Fields;
import rinsebell.web.form.Target;

/** What is written into the records of people who come again; it is no press of the floor, and goes by no desk. */
public final class ClientRoutes implements Routes {
    private static final Logger LOG = LoggerFactory.getLogger(ClientRoutes.class);

    private final Clients clients;
    private final LiveFloor live;
    private final PressRoutes pages;
    private final ApiPresses programs;

    public ClientRoutes(Clients clients, LiveFloor live, PressRoutes pages, ApiPresses programs) {
        this.clients = clients;
        this.live = live;
        this.pages = pages;
        this.programs = programs;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/clients", this::beginFromPage, Matter.HISTORY);
        routes.post("/clients/{id}/note", this::noteFromPage, Matter.HISTORY);
        routes.post("/api/clients", this::beginFromProgram, Matter.HISTORY);
        routes.post("/api/clients/{id}/note", this::noteFromProgram, Matter.HISTORY);
    }

    /** A record that begins with somebody's visit is linked to it by the same press. */
    private void beginFromPage(Context ctx) {
        var typed = FormBody.read(ctx);
        var begun = ClientForms.begun(target(0), typed);
        if (begun.errors().isEmpty()) {
            kept(ctx, new Address(ClientForms.CLIENTS, 0, ""), typed, () -> begin(ctx, begun.entry(), typed));
        } else {
            pages.wrong(ctx, new Address(ClientForms.CLIENTS, 0, ""), typed, begun.errors());
        }
    }

    private void begin(Context ctx, ClientForms.Begun begun, Fields typed) {
        var press = PressRoutes.pressId(ctx, typed);
        var client = begin(begun.label(), press);
        var visit = begun.visit();
        if (visit == null) {
            PressRoutes.go(ctx, "/clients/" + client.value());
        } else {
            var link = Fields.of("client", String.valueOf(client.value()));
            pages.press(ctx, new Address("visits", visit.value(), "client"), link, press);
        }
    }

    /** Does what a page asked for, or gives back what was typed. */
    private void kept(Context ctx, Address address, Fields typed, Runnable act) {
        try {
            act.run();
        } catch (DatabaseAway e) {
            LOG.error("a record could not be written: {}", e.getMessage());
            pages.notSaved(ctx, address, typed, false);
        }
    }

    /** The same press again finds its record; with another label it was meant for somebody else. */
    private ClientId begin(String label, String press) {
        var id = clients.add(label, press);
        if (clients.card(id).filter(card -> card.label().equals(label)).isEmpty()) {
            throw Problem.of(ProblemCode.PRESS_ID_REUSED).thrown();
        }
        return id;
    }

    private void noteFromPage(Context ctx) {
        var typed = FormBody.read(ctx);
        var id = id(ctx);
        var note = ClientForms.note(target(id.value()), typed);
        if (note.errors().isEmpty()) {
            kept(ctx, new Address(ClientForms.CLIENTS, id.value(), ClientForms.NOTE), typed, () -> {
                keep(id, note.entry());
                PressRoutes.go(ctx, "/clients/" + id.value());
            });
        } else {
            pages.wrong(ctx, new Address(ClientForms.CLIENTS, id.value(), ClientForms.NOTE), typed, note.errors());
        }
    }

    private void beginFromProgram(Context ctx) {
        var press = ApiPresses.pressId(ctx);
        read(ClientForms.begun(target(0), FormBody.json(ctx)), begun -> {
            ctx.status(201).json(new Begun(begin(begun.label(), press).value()));
        });
    }

    /** @param client the number of the record, to link visits to */
    record Begun(long client) {}

    private void noteFromProgram(Context ctx) {
        ApiPresses.pressId(ctx);
        var id = id(ctx);
        read(ClientForms.note(target(id.value()), FormBody.json(ctx)), note -> {
            keep(id, note);
            ctx.status(204);
        });
    }

    private <T> void read(Checked<T> checked, Consumer<T> then) {
        if (!checked.errors().isEmpty()) {
            throw programs.wrong(checked.errors());
        }
        try {
            then.accept(checked.entry());
        } catch (DatabaseAway e) {
            LOG.error("a record could not be written: {}", e.getMessage());
            throw Problem.of(ProblemCode.NOT_SAVED).thrown();
        }
    }

    private void keep(ClientId client, ClientNote note) {
        if (!clients.note(client, note)) {
            throw Numbered.nowhere();
        }
    }

    private static ClientId id(Context ctx) {
        return new ClientId(Numbered.at(ctx, "id"));
    }

    private Target target(long id) {
        var moment = live.moment();
        return new Target(moment.floor(), moment.texts(), moment.now(), id, clients);
    }
}
