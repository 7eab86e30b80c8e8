package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.lead.Days;
import rinsebell.app.lead.LeadRoutes;
import rinsebell.app.page.LiveFloor;

/** {@code GET /api/lead}: how a day rang, for programs. */
public final class LeadReads implements Routes {
    private final LiveFloor live;
    private final Days days;

    public LeadReads(LiveFloor live, Days days) {
        this.live = live;
        this.days = days;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                "/api/lead",
                ctx -> ctx.json(
                        LeadJson.of(days.of(LeadRoutes.day(ctx, live.moment())).report())),
                Matter.REPORTS);
    }
}
