package rinsebell.app.lead;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.web.board.LeadSheet;
import rinsebell.web.board.LeadTelling;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.Nav;

/** {@code GET /lead}: how a day rang, as a page; {@code /api/lead.csv}: the same figures for a spreadsheet. */
public final class LeadRoutes implements Routes {
    /** No salon has been open for longer. */
    private static final int YEARS = 100;

    private final LiveFloor live;
    private final Days days;

    public LeadRoutes(LiveFloor live, Days days) {
        this.live = live;
        this.days = days;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/lead", this::show, Matter.REPORTS);
        routes.get("/api/lead.csv", this::download, Matter.REPORTS);
    }

    private void show(Context ctx) {
        var moment = live.moment();
        ctx.html(live.page(page(ctx, moment), moment));
    }

    private void download(Context ctx) {
        var page = page(ctx, live.moment());
        ctx.header(
                "Content-Disposition",
                "attachment; filename=\"rinsebell-%s.csv\""
                        .formatted(page.days().day()));
        ctx.contentType("text/csv; charset=utf-8; header=present")
                .result(LeadSheet.of(page).csv());
    }

    private LeadPage page(Context ctx, Moment moment) {
        var told = days.of(day(ctx, moment));
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("lead.title"), Nav.DAY);
        return new LeadTelling(moment.on(told.floor(), told.texts()), told.report()).page(shell);
    }

    /**
     * Today where none is named.
     *
     * @throws rinsebell.app.door.ProblemException not-found for a day that has not begun, or is none
     */
    public static LocalDate day(Context ctx, Moment moment) {
        var today = moment.floor().salon().dayOf(moment.now());
        var named = ctx.queryParam("day");
        try {
            var day = named == null || named.isEmpty() ? today : LocalDate.parse(named);
            if (day.isAfter(today) || day.isBefore(today.minusYears(YEARS))) {
                throw Numbered.nowhere();
            }
            return day;
        } catch (DateTimeParseException e) {
            throw Numbered.nowhere();
        }
    }
}
