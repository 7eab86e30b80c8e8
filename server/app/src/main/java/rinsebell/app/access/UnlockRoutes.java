package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Cookies;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.trail.Noting;
import rinsebell.db.Keyring;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.PlainPage;
import rinsebell.web.access.PlainPage.Sent;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.form.Fields;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press.Hidden;

/** Where a PIN is given, and where what it opened is locked again. */
final class UnlockRoutes implements Routes {
    private static final int FORBIDDEN = 403;
    private static final int UNPROCESSABLE = 422;

    /** A page of this server. */
    private static final Pattern PAGE = Pattern.compile("/(?!/)[A-Za-z0-9/-]*([?][A-Za-z0-9/=&,.%+_-]*)?");

    /** What was typed elsewhere, and waits for a PIN; its names begin so. */
    private static final String CARRIED = "carried.";

    /** With it whoever gave a PIN here locks every device on which they did. */
    static final String EVERYWHERE = "everywhere";

    private final LiveFloor live;
    private final Keyring keyring;
    private final Access access;
    private final Unlocked unlocked;
    private final PinCheck check;

    UnlockRoutes(LiveFloor live, Keyring keyring, Access access, Unlocked unlocked, Guesses guesses) {
        this.live = live;
        this.keyring = keyring;
        this.access = access;
        this.unlocked = unlocked;
        this.check = new PinCheck(keyring, guesses);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(AccessTelling.UNLOCK, this::open, Matter.SIGNAL);
        routes.post(AccessTelling.UNLOCK, this::unlock, Matter.UNLOCKING);
        routes.post(AccessTelling.LOCK, this::lock, Matter.UNLOCKING);
        // A page on which somebody types tells so, and is not locked meanwhile.
        routes.post(AccessTelling.UNLOCK + "/stay", ctx -> ctx.status(204), Matter.OWN_PIN);
    }

    /**
     * What a PIN was asked for.
     *
     * @param page where to go with it
     * @param matter what that is about
     * @param carried what was typed there and not saved; empty for a page that was only opened
     */
    private record Asked(String page, Matter matter, List<Hidden> carried) {
        static Asked of(Fields typed) {
            var page = typed.first("page").filter(PAGE.asMatchPredicate()).orElse("/");
            var matter = typed.first("matter").flatMap(Asked::matter).orElse(Matter.OWN_PIN);
            var carried = typed.names().stream()
                    .filter(name -> name.startsWith(CARRIED))
                    .flatMap(name -> typed.all(name).stream().map(value -> new Hidden(name, value)))
                    .toList();
            return new Asked(page, matter, carried);
        }

        private static Optional<Matter> matter(String name) {
            return List.of(Matter.values()).stream()
                    .filter(one -> one.isPrivate() && one.name().equals(name))
                    .findFirst();
        }

        List<Hidden> sentAlong() {
            List<Hidden> all = new ArrayList<>(carried);
            all.add(new Hidden("page", page));
            all.add(new Hidden("matter", matter.name()));
            return all;
        }
    }

    /** A link brings nothing along that a PIN would save. */
    private void open(Context ctx) {
        refusePlain(ctx);
        var asked = Asked.of(Fields.of(ctx.queryParamMap()));
        show(ctx, new Asked(asked.page, asked.matter, List.of()), "");
    }

    /** Nobody shall type a PIN where others read along. */
    private static void refusePlain(Context ctx) {
        if (Access.isPlain(ctx, Caller.of(ctx))) {
            throw Problem.of(ProblemCode.READ_ALONG).thrown();
        }
    }

    /** Asks for a PIN instead of doing what was asked; what was typed is carried along. */
    void ask(Context ctx, Matter matter, boolean others) {
        if (ctx.method().name().equals("POST")) {
            var typed = FormBody.read(ctx);
            var carried = typed.names().stream()
                    .filter(name -> !FormBody.OF_SENDING.contains(name))
                    .flatMap(name -> typed.all(name).stream().map(value -> new Hidden(CARRIED + name, value)))
                    .toList();
            show(ctx.status(FORBIDDEN), new Asked(ctx.path(), matter, carried), others(ctx, others));
        } else {
            var query = ctx.queryString();
            var page = ctx.path() + (query == null ? "" : "?" + query);
            var safe = PAGE.matcher(page).matches() ? page : ctx.path();
            show(ctx.status(FORBIDDEN), new Asked(safe, matter, List.of()), others(ctx, others));
        }
    }

    private String others(Context ctx, boolean others) {
        var moment = live.moment();
        return others
                ? Caller.of(ctx)
                        .unlocked()
                        .map(person -> moment.say("unlock.not_yours", moment.name(person)))
                        .orElse("")
                : "";
    }

    private void unlock(Context ctx) {
        refusePlain(ctx);
        access.takeResets();
        var caller = Caller.of(ctx);
        var typed = FormBody.read(ctx);
        var asked = Asked.of(typed);
        var moment = live.moment();
        var person = PinRoutes.person(typed)
                .filter(PinRoutes.people(keyring, access, asked.matter)::contains)
                .orElse(null);
        if (person == null) {
            show(ctx.status(UNPROCESSABLE), asked, moment.say("unlock.choose"));
            return;
        }
        Noting.about(ctx, person.value());
        var given = check.give(person, caller.device(), typed.first("pin").orElse(""));
        switch (given.kind()) {
            case WRONG -> show(ctx.status(FORBIDDEN), asked, person, moment.say("unlock.wrong", moment.name(person)));
            case WAIT -> {
                ctx.header("Retry-After", String.valueOf(given.left().toSeconds() + 1));
                show(ctx.status(429), asked, person, new AccessTelling(moment).wait(given.left()));
            }
            case RIGHT -> opened(ctx, caller, person, asked);
        }
    }

    /** A key of before opens nothing any more. */
    private void opened(Context ctx, Caller caller, StaffId person, Asked asked) {
        Access.key(ctx, Access.UNLOCKED).ifPresent(unlocked::lock);
        Key key = unlocked.unlock(caller.device(), person);
        Cookies.keep(ctx, Access.UNLOCKED, key.text(), Unlocked.LONGEST);
        if (asked.carried.isEmpty()) {
            ctx.redirect(asked.page, HttpStatus.SEE_OTHER);
        } else {
            resume(ctx, asked);
        }
    }

    private void resume(Context ctx, Asked asked) {
        var moment = live.moment();
        var carried = asked.carried.stream()
                .map(one -> new Hidden(one.name().substring(CARRIED.length()), one.value()))
                .toList();
        var form = new Sent("", asked.page, List.of(), carried, moment.say("unlock.resume.send"));
        page(ctx, moment, "unlock.resume", moment.say("unlock.resume.intro"), "", List.of(form));
    }

    private void lock(Context ctx) {
        if (FormBody.read(ctx).first(EVERYWHERE).isPresent()) {
            Caller.of(ctx).unlocked().ifPresent(person -> unlocked.lockAll(person::equals));
        }
        Access.key(ctx, Access.UNLOCKED).ifPresent(unlocked::lock);
        Cookies.drop(ctx, Access.UNLOCKED);
        ctx.redirect(PageRoutes.from(ctx).orElse("/"), HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx, Asked asked, String notice) {
        show(ctx, asked, null, notice);
    }

    private void show(Context ctx, Asked asked, @Nullable StaffId chosen, String notice) {
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var people = PinRoutes.people(keyring, access, asked.matter);
        if (people.isEmpty()) {
            page(ctx, moment, "unlock.title", moment.say("unlock.intro"), moment.say("unlock.nobody"), List.of());
            return;
        }
        var only = people.size() == 1 ? people.get(0) : null;
        var form = new Sent(
                "",
                AccessTelling.UNLOCK,
                List.of(telling.people(people, chosen == null ? only : chosen), telling.pinField("pin", "", "")),
                asked.sentAlong(),
                moment.say("unlock.in"));
        page(ctx, moment, "unlock.title", moment.say("unlock.intro"), notice, List.of(form));
    }

    private void page(Context ctx, Moment moment, String title, String intro, String notice, List<Sent> forms) {
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say(title), Nav.SETUP);
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(new PlainPage(shell, intro, notice, null, List.of(), null, forms), moment));
    }
}
