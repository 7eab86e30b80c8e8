package rinsebell.app.privacy;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.db.ClientFile;
import rinsebell.db.Clients;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.board.LivePages;
import rinsebell.web.form.EverythingPage;
import rinsebell.web.view.Nav;

/** {@code GET /clients/7/export}: everything that is kept about somebody, for them to read. */
public final class EverythingRoutes implements Routes {
    private final LiveFloor live;
    private final Clients clients;

    public EverythingRoutes(LiveFloor live, Clients clients) {
        this.live = live;
        this.clients = clients;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/clients/{id}/export", this::show, Matter.HISTORY);
    }

    private void show(Context ctx) {
        var file = clients.file(new ClientId(Numbered.at(ctx, "id"))).orElseThrow(Numbered::nowhere);
        var moment = live.moment();
        var client = new EverythingPage.Client(
                file.id(), file.label(), file.met(), file.notes(), Stays.of(file, moment), looks(file));
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("everything.title"), Nav.FLOOR);
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(new EverythingPage(moment, client).page(shell), moment));
    }

    private static List<EverythingPage.Look> looks(ClientFile file) {
        return file.looks().stream()
                .map(step -> new EverythingPage.Look(
                        step.at(), step.person(), Matter.valueOf(step.matter()).key(), !step.isLook()))
                .toList();
    }
}
