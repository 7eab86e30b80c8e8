package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.db.Keyring;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.PlainPage;
import rinsebell.web.access.PlainPage.Sent;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.form.Fields;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.view.Field;
import rinsebell.web.view.Nav;

/** Who has a PIN, and choosing one: everybody their own, a manager anybody's. */
final class PinRoutes implements Routes {
    private static final int UNPROCESSABLE = 422;

    private final LiveFloor live;
    private final Keyring keyring;
    private final Access access;
    private final Unlocked unlocked;
    private final Guesses guesses;

    PinRoutes(LiveFloor live, Keyring keyring, Access access, Unlocked unlocked, Guesses guesses) {
        this.live = live;
        this.keyring = keyring;
        this.access = access;
        this.unlocked = unlocked;
        this.guesses = guesses;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(AccessTelling.PINS, this::list, Matter.OWN_PIN);
        routes.get(AccessTelling.PINS + "/{id}", ctx -> form(ctx, member(ctx), List.of()), Matter.OWN_PIN);
        routes.post(AccessTelling.PINS + "/{id}", this::choose, Matter.OWN_PIN);
    }

    private void list(Context ctx) {
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var caller = Caller.of(ctx);
        var rows = moment.floor().salon().working().stream()
                .map(member ->
                        telling.pin(member, keyring.pin(member.id()).isPresent(), mayChoose(caller, member.id())))
                .toList();
        show(
                ctx,
                moment,
                moment.say("pins.title"),
                new Body(
                        moment.say("pins.intro"),
                        notice(moment),
                        List.of(telling.part("pins.staff", rows), Links.part(telling, moment)),
                        List.of()));
    }

    private String notice(Moment moment) {
        if (access.hasManagersPin()) {
            return "";
        }
        var hasManager = moment.floor().salon().working().stream().anyMatch(member -> member.role() == Role.MANAGER);
        return moment.say(hasManager ? "pins.first" : "pins.no_manager");
    }

    private boolean mayChoose(Caller caller, StaffId whose) {
        return access.isOpenYet(caller)
                || caller.unlocked().filter(whose::equals).isPresent()
                || caller.unlocked()
                        .flatMap(access::role)
                        .filter(Role.MANAGER::equals)
                        .isPresent();
    }

    private StaffMember member(Context ctx) {
        var id = new StaffId(Numbered.at(ctx, "id"));
        var member = live.snapshot().floor().salon().workingMember(id).orElseThrow(Numbered::nowhere);
        if (!mayChoose(Caller.of(ctx), id)) {
            throw Problem.of(ProblemCode.NOT_YOURS).thrown();
        }
        return member;
    }

    /** @param problems in the order of the fields: what is wrong with each */
    private void form(Context ctx, StaffMember member, List<String> problems) {
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var name = moment.name(member.id());
        List<Field> fields = new ArrayList<>();
        if (!access.isOpenYet(Caller.of(ctx))) {
            fields.add(telling.pinField("current", "", problem(problems, 0)));
        }
        fields.add(telling.pinField("fresh", "", problem(problems, 1)));
        fields.add(telling.pinField("again", "", problem(problems, 2)));
        var sent = new Sent(
                "", AccessTelling.PINS + "/" + member.id().value(), fields, List.of(), moment.say("pins.keep"));
        var body = new Body(moment.say("pins.choose.intro", name), "", List.of(), List.of(sent));
        show(ctx, moment, moment.say("pins.choose.title", name), body);
    }

    private static String problem(List<String> problems, int at) {
        return at < problems.size() ? problems.get(at) : "";
    }

    /** Whoever unlocked this shows once more that it is they who sit there. */
    private void choose(Context ctx) {
        var member = member(ctx);
        var typed = FormBody.read(ctx);
        var caller = Caller.of(ctx);
        var wrong = access.isOpenYet(caller) ? "" : current(caller, typed);
        var fresh = typed.first("fresh").orElse("");
        var flaw = flaw(fresh);
        var differ = flaw.isEmpty() && !fresh.equals(typed.first("again").orElse("")) ? say("pins.flaw.differ") : "";
        if (!(wrong + flaw + differ).isEmpty()) {
            form(ctx.status(UNPROCESSABLE), member, List.of(wrong, flaw, differ));
            return;
        }
        keyring.setPin(member.id(), PinHash.of(fresh));
        unlocked.lockAll(member.id()::equals);
        ctx.redirect(AccessTelling.PINS, HttpStatus.SEE_OTHER);
    }

    private String current(Caller caller, Fields typed) {
        var person = caller.unlocked().orElseThrow();
        var given = new PinCheck(keyring, guesses)
                .give(person, caller.device(), typed.first("current").orElse(""));
        var moment = live.moment();
        return switch (given.kind()) {
            case RIGHT -> "";
            case WRONG -> moment.say("unlock.wrong", moment.name(person));
            case WAIT -> new AccessTelling(moment).wait(given.left());
        };
    }

    private String flaw(String pin) {
        return PinRule.flaw(pin)
                .map(flaw -> say("pins.flaw." + flaw.name().toLowerCase(Locale.ROOT)))
                .orElse("");
    }

    private String say(String key) {
        return live.moment().say(key);
    }

    private record Body(String intro, String notice, List<Part> parts, List<Sent> forms) {}

    private void show(Context ctx, Moment moment, String title, Body body) {
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(title, Nav.SETUP);
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(new PlainPage(shell, body.intro, body.notice, null, body.parts, null, body.forms), moment));
    }

    /** For whom there is a PIN here and who may do it. */
    static List<StaffId> people(Keyring keyring, Access access, Matter matter) {
        return keyring.pins().stream()
                .map(Keyring.Pin::person)
                .filter(person -> access.role(person).filter(matter::allows).isPresent())
                .sorted((one, other) -> Long.compare(one.value(), other.value()))
                .toList();
    }

    static Optional<StaffId> person(Fields typed) {
        return typed.first("person").flatMap(Numbered::number).map(StaffId::new);
    }
}
