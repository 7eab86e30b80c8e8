package rinsebell.app.use;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.lead.LeadRoutes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.UseSheet;
import rinsebell.web.board.UseTelling;
import rinsebell.web.view.Nav;

/** {@code GET /use}: what was used on a day, as a page; {@code /api/use.csv}: bowl by bowl, for a spreadsheet. */
public final class UseRoutes implements Routes {
    private final LiveFloor live;
    private final UseDays days;

    public UseRoutes(LiveFloor live, UseDays days) {
        this.live = live;
        this.days = days;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/use", this::show, Matter.REPORTS);
        routes.get("/api/use.csv", this::download, Matter.REPORTS);
    }

    private void show(Context ctx) {
        var moment = live.moment();
        var day = LeadRoutes.day(ctx, moment);
        var told = days.of(day);
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("use.title"), Nav.DAY);
        ctx.html(live.page(
                new UseTelling(moment.on(told.floor(), told.texts()), told.report(), days.until(day)).page(shell),
                moment));
    }

    private void download(Context ctx) {
        var moment = live.moment();
        var told = days.of(LeadRoutes.day(ctx, moment));
        ctx.header(
                "Content-Disposition",
                "attachment; filename=\"rinsebell-use-%s.csv\""
                        .formatted(told.report().day()));
        ctx.contentType("text/csv; charset=utf-8; header=present")
                .result(new UseSheet(told.report(), moment.on(told.floor(), told.texts())).csv());
    }
}
