package rinsebell.app.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Bodies;
import rinsebell.app.door.Browser;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Cookies;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.view.KeptPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.View;

/** The live screens. Without script they come again by themselves. */
public final class PageRoutes implements Routes {
    /** The cookie that says whose phone this is: the number of a member of staff. */
    private static final String POCKET = "pocket";

    private final LiveFloor live;
    private final Answers answers;

    public PageRoutes(LiveFloor live, Answers answers) {
        this.live = live;
        this.answers = answers;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/", this::floor, Matter.FLOOR);
        routes.get("/basins", ctx -> show(ctx, LivePages::basins), Matter.FLOOR);
        routes.get("/desk", ctx -> show(ctx, LivePages::desk), Matter.FLOOR);
        routes.get("/bells", ctx -> show(ctx, LivePages::bells), Matter.SIGNAL);
        routes.get("/device", ctx -> show(ctx, LivePages::device), Matter.SIGNAL);
        routes.get("/kept", ctx -> show(ctx, pages -> new KeptPage()), Matter.FLOOR);
        routes.get("/pocket", this::pocket, Matter.FLOOR);
        routes.get("/chairs/{chair}", this::chair, Matter.FLOOR);
        routes.get("/visits/{visit}", this::visit, Matter.FLOOR);
        routes.post("/look", PageRoutes::choose, Matter.SIGNAL);
    }

    private void floor(Context ctx) {
        if (live.snapshot().floor().salon().isSetUp()) {
            show(ctx, LivePages::floor);
        } else {
            ctx.redirect("/setup");
        }
    }

    /** Whoever sits there; a free chair opens a welcome. */
    private void chair(Context ctx) {
        var number = Numbered.at(ctx, "chair");
        if (number > Integer.MAX_VALUE) {
            throw Numbered.nowhere();
        }
        var place = Place.chair((int) number);
        if (!live.snapshot().floor().salon().rooms().has(place)) {
            throw Numbered.nowhere();
        }
        ctx.redirect(live.snapshot().floor().at(place).stream()
                .findFirst()
                .map(visit -> "/visits/" + visit.id().value())
                .orElse("/welcome?place=chair-" + number));
    }

    private void visit(Context ctx) {
        show(ctx, pages -> pages.visit(visit(ctx, pages.moment())));
    }

    static Visit visit(Context ctx, Moment moment) {
        return moment.floor().visit(new VisitId(Numbered.at(ctx, "visit"))).orElseThrow(Numbered::nowhere);
    }

    private LivePages pages(Context ctx, Moment moment) {
        return new LivePages(moment, look(ctx), answers.of(ctx, moment).orElse(null));
    }

    /** The device's own choice, kept in a cookie. */
    public static @Nullable Look look(Context ctx) {
        var chosen = Cookies.of(ctx, "look").orElse(null);
        return chosen == null ? null : chosen.equals("dark") ? Look.DARK : chosen.equals("light") ? Look.LIGHT : null;
    }

    /** A phone that was told once whose it is, goes on showing that person's clients. */
    private void pocket(Context ctx) {
        var chosen = ctx.queryParam("staff");
        // A link on another site's page shows somebody's clients once, and changes nothing on this phone.
        var isOurs = !"cross-site".equals(ctx.header("Sec-Fetch-Site"));
        if (chosen != null && isOurs) {
            Cookies.keep(
                    ctx, POCKET, Numbered.number(chosen).map(String::valueOf).orElse(""));
        }
        var staff = staff(chosen == null ? Cookies.of(ctx, POCKET).orElse(null) : chosen);
        var caller = Caller.of(ctx);
        if (staff != null && isOurs && caller.isPocket()) {
            Who.keep(ctx, staff, caller, live.snapshot().floor().salon().policy());
        }
        show(ctx, pages -> pages.pocket(staff));
    }

    private @Nullable StaffId staff(@Nullable String number) {
        return Numbered.number(number)
                .map(StaffId::new)
                .filter(id -> live.snapshot().floor().salon().staffMember(id).isPresent())
                .orElse(null);
    }

    /** What is drawn and the number it claims are of one moment: with a later number a screen would drop what is newer. */
    private void show(Context ctx, Function<LivePages, View> page) {
        Browser.know(ctx);
        var moment = live.moment();
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(page.apply(pages(ctx, moment)), moment));
    }

    /** Light or dark, for this device. */
    private static void choose(Context ctx) {
        var body = new String(Bodies.of(ctx), StandardCharsets.UTF_8);
        var chosen = body.contains("look=dark") ? "dark" : "light";
        Cookies.keep(ctx, "look", chosen);
        ctx.redirect(from(ctx).orElse("/"), HttpStatus.SEE_OTHER);
    }

    /** The page of this salon on which something was pressed, without what an earlier press left in its address. */
    public static Optional<String> from(Context ctx) {
        return Optional.ofNullable(ctx.header("Referer"))
                .map(address -> address.replaceFirst("^[a-z]+://[^/]*", "")
                        .replaceFirst("#.*$", "")
                        .replaceFirst("([?&])done=[^&]*&?", "$1")
                        .replaceFirst("[?&]$", ""))
                .filter(path -> path.matches("/(?!/)[A-Za-z0-9/-]*([?][A-Za-z0-9/=&,.%+_-]*)?"));
    }
}
