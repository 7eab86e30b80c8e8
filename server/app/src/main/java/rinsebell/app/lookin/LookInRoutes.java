package rinsebell.app.lookin;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.press.PressRoutes;
import rinsebell.db.LookIns;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.form.Fields;
import rinsebell.web.form.LookInForms;
import rinsebell.web.form.LookInsPage.Fresh;
import rinsebell.web.form.LookInsTelling;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Field;
import rinsebell.web.view.Nav;

/** The page of links that look in: made here, shown once, and taken back. */
public final class LookInRoutes implements Routes {
    /** More than a salon has phones and calendars; strangers may not fill the disk. */
    static final int MOST = 20;

    private static final int CONFLICT = 409;

    private final LiveFloor live;
    private final LookIns links;

    public LookInRoutes(LiveFloor live, LookIns links) {
        this.live = live;
        this.links = links;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                LookInsTelling.PAGE,
                ctx -> {
                    var moment = live.moment();
                    show(ctx, moment, blank(moment), null);
                },
                Matter.DEVICES);
        routes.post(LookInsTelling.PAGE, this::make, Matter.DEVICES);
        routes.post(LookInsTelling.PAGE + "/{id}/take-back", this::takeBack, Matter.DEVICES);
    }

    private void make(Context ctx) {
        var typed = FormBody.read(ctx);
        var moment = live.moment();
        var name = LookInForms.name(moment, typed);
        if (name.errors().isEmpty()) {
            make(ctx, moment, name.entry(), PressRoutes.pressId(ctx, typed));
        } else {
            show(ctx.status(422), moment, new LookInsTelling(moment).name(typed, name.errors()), null);
        }
    }

    private void make(Context ctx, Moment moment, String name, String press) {
        var key = Key.fresh();
        switch (links.add(new LookIns.Fresh(name, key.hash(), press, moment.now()), MOST)) {
            case MADE -> show(ctx, moment, blank(moment), fresh(ctx, moment, name, key));
            case MADE_BEFORE -> refuse(ctx, moment, moment.say("look_ins.made_before"));
            case TOO_MANY -> refuse(ctx, moment, moment.say("look_ins.too_many", MOST));
        }
    }

    /** The door lets only names in under which this server is known. */
    private static Fresh fresh(Context ctx, Moment moment, String name, Key key) {
        var page = ctx.scheme() + "://" + ctx.host() + LookRoutes.page(key);
        var isLocal = HostNames.isLoopback(String.valueOf(ctx.host()));
        return new LookInsTelling(moment).fresh(name, page, page + LookRoutes.CALENDAR, isLocal);
    }

    private void takeBack(Context ctx) {
        FormBody.read(ctx);
        links.takeBack(Numbered.at(ctx, "id"));
        PressRoutes.go(ctx, LookInsTelling.PAGE);
    }

    private static Field blank(Moment moment) {
        return new LookInsTelling(moment).name(Fields.NONE, List.of());
    }

    private void refuse(Context ctx, Moment moment, String why) {
        var answer = new Answer(Answer.Kind.REFUSED, why, List.of(), List.of());
        show(ctx.status(CONFLICT), new LivePages(moment, PageRoutes.look(ctx), answer), blank(moment), null);
    }

    private void show(Context ctx, Moment moment, Field name, @Nullable Fresh fresh) {
        show(ctx, new LivePages(moment, PageRoutes.look(ctx), null), name, fresh);
    }

    private void show(Context ctx, LivePages pages, Field name, @Nullable Fresh fresh) {
        var moment = pages.moment();
        var telling = new LookInsTelling(moment);
        var rows = links.all().stream()
                .map(link -> telling.row(link.id(), link.name(), link.made(), link.opened()))
                .toList();
        var shell = pages.still(moment.say("look_ins.title"), Nav.DESK);
        ctx.html(live.page(telling.page(shell, rows, name, fresh), moment));
    }
}
