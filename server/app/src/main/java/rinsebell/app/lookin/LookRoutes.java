package rinsebell.app.lookin;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.door.EntityTag;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.db.LookIns;
import rinsebell.web.board.LookTelling;
import rinsebell.web.board.Moment;
import rinsebell.web.view.LookClosedPage;

/**
 * What a key opens, and all that it opens: {@code GET /look/{key}}, a page for a phone, and the same as a calendar below it.
 * A key that was taken back and one that never was are answered alike.
 */
public final class LookRoutes implements Routes {
    /** What stands behind the address of the page in that of the calendar. */
    static final String CALENDAR = "/chairs.ics";

    private static final String PAGE = "/look/";
    private static final String KEY = "key";

    private final LiveFloor live;
    private final LookIns links;
    private final ChairCalendar calendar = new ChairCalendar();

    public LookRoutes(LiveFloor live, LookIns links) {
        this.live = live;
        this.links = links;
    }

    static String page(Key key) {
        return PAGE + key.text();
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(PAGE + "{" + KEY + "}", ctx -> open(ctx, this::show), Matter.OPEN);
        routes.get(PAGE + "{" + KEY + "}" + CALENDAR, ctx -> open(ctx, this::send), Matter.OPEN);
    }

    @FunctionalInterface
    private interface Opened {
        void answer(Context ctx, Key key, Moment moment);
    }

    /** The address is the secret, so nothing that the page loads is told of it. */
    private void open(Context ctx, Opened opened) {
        ctx.header("Referrer-Policy", "no-referrer");
        var moment = live.moment();
        Key.read(ctx.pathParam(KEY))
                .filter(key -> links.open(key.hash(), moment.now()))
                .ifPresentOrElse(key -> opened.answer(ctx, key, moment), () -> close(ctx, moment));
    }

    private void close(Context ctx, Moment moment) {
        ctx.status(404).html(live.page(new LookClosedPage(), moment));
    }

    private void show(Context ctx, Key key, Moment moment) {
        ctx.html(live.page(new LookTelling(moment).page(), moment));
    }

    /** A client keeps it, and asks each time whether it is still the same. */
    private void send(Context ctx, Key key, Moment moment) {
        var written = calendar.of(moment, key.hash());
        var tag = EntityTag.of(written);
        ctx.header("Cache-Control", "private, no-cache").header("ETag", tag.text());
        if (tag.isHeldBy(ctx)) {
            ctx.status(304);
        } else {
            ctx.contentType("text/calendar; charset=utf-8").result(written);
        }
    }
}
