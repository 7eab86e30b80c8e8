package rinsebell.app.privacy;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.db.Compactions;
import rinsebell.db.DatabaseAway;
import rinsebell.db.Retention;
import rinsebell.db.Soundings;
import rinsebell.db.Trail;
import rinsebell.floor.salon.Role;
import rinsebell.web.board.LivePages;
import rinsebell.web.privacy.PrivacyTelling;
import rinsebell.web.view.Nav;

/** {@code GET /privacy}: what is kept about people, for everybody who works here, and for whoever asks them. */
public final class PrivacyRoutes implements Routes {
    private static final int RUNS_SHOWN = 14;

    private final LiveFloor live;
    private final Retention retention;
    private final Compactions compactions;

    public PrivacyRoutes(LiveFloor live, Retention retention, Compactions compactions) {
        this.live = live;
        this.retention = retention;
        this.compactions = compactions;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(PrivacyTelling.PRIVACY, this::show, Matter.FLOOR);
    }

    private void show(Context ctx) {
        var moment = live.moment();
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("privacy.title"), Nav.SETUP);
        ctx.html(live.page(new PrivacyTelling(moment, allowed(), past()).page(shell), moment));
    }

    private static Map<String, List<Role>> allowed() {
        return Stream.of(Matter.values()).collect(Collectors.toMap(Matter::key, PrivacyRoutes::roles));
    }

    private static List<Role> roles(Matter matter) {
        return matter.isPrivate()
                ? Stream.of(Role.values()).filter(matter::allows).toList()
                : List.of();
    }

    private PrivacyTelling.Past past() {
        var runs = retention.last(RUNS_SHOWN).stream()
                .map(run -> new PrivacyTelling.Run(
                        run.at(), run.until(), run.records(), run.texts(), run.soundings(), run.steps()))
                .toList();
        try {
            return new PrivacyTelling.Past(
                    runs,
                    compactions.last().orElse(null),
                    compactions.isDue(),
                    new PrivacyTelling.Times(Soundings.KEPT, Trail.KEPT));
        } catch (IOException e) {
            throw new DatabaseAway(e);
        }
    }
}
