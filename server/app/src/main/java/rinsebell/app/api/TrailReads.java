package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.lead.LeadRoutes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.trail.TrailDays;

/** {@code GET /api/trail}: who did what on a day, and who looked at whom, for programs. */
public final class TrailReads implements Routes {
    private final LiveFloor live;
    private final TrailDays days;

    public TrailReads(LiveFloor live, TrailDays days) {
        this.live = live;
        this.days = days;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                "/api/trail", ctx -> ctx.json(TrailJson.of(days.of(LeadRoutes.day(ctx, live.moment())))), Matter.TRAIL);
    }
}
