package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.PlainPage;
import rinsebell.web.board.LivePages;
import rinsebell.web.view.Nav;

/** The table of rights, for everybody who works here to read. */
final class RightsRoutes implements Routes {
    private static final Map<String, Matter> MATTERS =
            Stream.of(Matter.values()).collect(Collectors.toMap(Matter::key, Function.identity()));

    private final LiveFloor live;

    RightsRoutes(LiveFloor live) {
        this.live = live;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(AccessTelling.RIGHTS, this::show, Matter.FLOOR);
    }

    private void show(Context ctx) {
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var keys = Stream.of(Matter.values())
                .filter(matter -> !matter.isOpen())
                .map(Matter::key)
                .toList();
        var table = telling.rights(
                keys,
                (key, role) -> matter(key).allows(role),
                key -> matter(key).isPrivate());
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("rights.title"), Nav.SETUP);
        ctx.html(live.page(
                new PlainPage(
                        shell,
                        moment.say("rights.intro"),
                        "",
                        null,
                        List.of(Links.part(telling, moment)),
                        table,
                        List.of()),
                moment));
    }

    private static Matter matter(String key) {
        return Objects.requireNonNull(MATTERS.get(key));
    }
}
