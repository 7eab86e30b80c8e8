package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.lead.LeadRoutes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.use.UseDays;

/** {@code GET /api/use}: what was used on a day, for programs. */
public final class UseReads implements Routes {
    private final LiveFloor live;
    private final UseDays days;

    public UseReads(LiveFloor live, UseDays days) {
        this.live = live;
        this.days = days;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/use", this::read, Matter.REPORTS);
    }

    private void read(Context ctx) {
        var day = LeadRoutes.day(ctx, live.moment());
        ctx.json(UseJson.of(days.of(day).report(), days.until(day)));
    }
}
