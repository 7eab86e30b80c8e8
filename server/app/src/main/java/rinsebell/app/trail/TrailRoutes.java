package rinsebell.app.trail;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.lead.LeadRoutes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.web.board.LivePages;
import rinsebell.web.form.TrailTelling;
import rinsebell.web.form.TrailTelling.Recorded;
import rinsebell.web.form.TrailTelling.Step;
import rinsebell.web.view.Nav;

/** {@code GET /trail}: who did what on a day, and who looked at whom; {@code /api/trail.csv}: for a spreadsheet. */
public final class TrailRoutes implements Routes {
    private final LiveFloor live;
    private final TrailDays days;

    public TrailRoutes(LiveFloor live, TrailDays days) {
        this.live = live;
        this.days = days;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(TrailTelling.PAGE, this::show, Matter.TRAIL);
        routes.get("/api/trail.csv", this::download, Matter.TRAIL);
    }

    private void show(Context ctx) {
        var moment = live.moment();
        var told = told(ctx);
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("trail.title"), Nav.SETUP);
        ctx.html(live.page(telling(told).page(shell, told.day(), recorded(told), steps(told)), moment));
    }

    private void download(Context ctx) {
        var told = told(ctx);
        ctx.header("Content-Disposition", "attachment; filename=\"rinsebell-trail-%s.csv\"".formatted(told.day()));
        ctx.contentType("text/csv; charset=utf-8; header=present")
                .result(telling(told).csv(recorded(told), steps(told)));
    }

    private TrailDays.Told told(Context ctx) {
        return days.of(LeadRoutes.day(ctx, live.moment()));
    }

    private TrailTelling telling(TrailDays.Told told) {
        return new TrailTelling(told.moment(), days::deviceName);
    }

    private static List<Recorded> recorded(TrailDays.Told told) {
        return told.pressed().stream()
                .map(one -> new Recorded(one.fact(), one.press(), one.device()))
                .toList();
    }

    private static List<Step> steps(TrailDays.Told told) {
        return told.steps().stream()
                .map(step -> new Step(
                        step.at(),
                        step.person(),
                        step.device(),
                        Matter.valueOf(step.matter()).key(),
                        step.route(),
                        step.isLook(),
                        step.subject(),
                        step.status()))
                .toList();
    }
}
