package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.page.Who;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.PlainPage;
import rinsebell.web.access.PlainPage.Sent;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press.Hidden;

/** Where somebody says by a touch that it is they who work at this device, and locks what a PIN has opened. */
final class MeRoutes implements Routes {
    private final LiveFloor live;
    private final Unlocked unlocked;
    private final LongFunction<String> deviceName;

    MeRoutes(LiveFloor live, Unlocked unlocked, LongFunction<String> deviceName) {
        this.live = live;
        this.unlocked = unlocked;
        this.deviceName = deviceName;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(AccessTelling.ME, this::show, Matter.SIGNAL);
        routes.post(AccessTelling.ME, this::choose, Matter.SIGNAL);
    }

    private void choose(Context ctx) {
        var salon = live.snapshot().floor().salon();
        var person = PinRoutes.person(FormBody.read(ctx))
                .filter(id -> salon.workingMember(id).isPresent());
        person.ifPresentOrElse(id -> Who.keep(ctx, id, Caller.of(ctx), salon.policy()), () -> Who.forget(ctx));
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx) {
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var caller = Caller.of(ctx);
        var who = Who.of(ctx, moment.floor().salon()).orElse(null);
        List<StaffId> working =
                moment.floor().salon().working().stream().map(StaffMember::id).toList();
        List<Sent> forms = new ArrayList<>();
        caller.unlocked().ifPresent(person -> {
            forms.add(lock(moment, person));
            elsewhere(person, caller.device()).ifPresent(names -> forms.add(lockEverywhere(moment, names)));
        });
        forms.add(
                new Sent("", AccessTelling.ME, List.of(telling.names(working, who)), List.of(), moment.say("me.keep")));
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("me.title"), Nav.FLOOR);
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(
                new PlainPage(
                        shell,
                        moment.say(
                                "me.intro",
                                moment.floor().salon().policy().keeping().nameMinutes()),
                        "",
                        null,
                        List.of(Links.part(telling, moment)),
                        null,
                        forms),
                moment));
    }

    private Optional<String> elsewhere(StaffId person, long here) {
        return unlocked.devices(person).stream()
                .filter(device -> device != here)
                .map(deviceName::apply)
                .reduce((one, next) -> one + ", " + next);
    }

    private static Sent lockEverywhere(Moment moment, String names) {
        return new Sent(
                moment.say("me.unlocked_elsewhere", names),
                AccessTelling.LOCK,
                List.of(),
                List.of(new Hidden(UnlockRoutes.EVERYWHERE, "yes")),
                moment.say("me.lock_everywhere"));
    }

    private static Sent lock(Moment moment, StaffId person) {
        var title = moment.say("me.unlocked", moment.name(person));
        return new Sent(title, AccessTelling.LOCK, List.of(), List.of(), moment.say("me.lock"));
    }
}
