package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Caller;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.press.PressRoutes;
import rinsebell.app.trail.Noting;
import rinsebell.app.trust.WayIn;
import rinsebell.db.Keyring;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.PlainPage;
import rinsebell.web.access.PlainPage.Sent;
import rinsebell.web.access.PlainPage.Shown;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.form.FaultWords;
import rinsebell.web.form.Fields;
import rinsebell.web.form.LookInForms;
import rinsebell.web.view.Field;
import rinsebell.web.view.Nav;
import rinsebell.web.view.QrCode;

/** The devices that are in: seen, invited, thrown out. */
final class DeviceRoutes implements Routes {

    /** What a program's key can be for. */
    private static final List<String> SCOPES = List.of(Caller.READS, Caller.ACTS);

    private final LiveFloor live;
    private final Keyring keyring;
    private final Invitations invitations;
    private final Access access;
    private final Present present;
    private final LongConsumer out;
    private final Supplier<Optional<WayIn>> wayIn;

    /**
     * @param out is told the number of each that is thrown out
     * @param wayIn how other devices reach the server; empty where they can't
     */
    DeviceRoutes(
            LiveFloor live,
            Keyring keyring,
            Invitations invitations,
            Access access,
            Present present,
            LongConsumer out,
            Supplier<Optional<WayIn>> wayIn) {
        this.out = out;
        this.wayIn = wayIn;
        this.live = live;
        this.keyring = keyring;
        this.invitations = invitations;
        this.access = access;
        this.present = present;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(AccessTelling.DEVICES, this::list, Matter.DEVICES);
        routes.post(AccessTelling.DEVICES, this::invite, Matter.DEVICES);
        routes.post(AccessTelling.PROGRAMS, this::makeKey, Matter.DEVICES);
        routes.post(AccessTelling.DEVICES + "/plain", this::allowPlain, Matter.DEVICES);
        routes.post(AccessTelling.DEVICES + "/{id}/throw-out", this::throwOut, Matter.DEVICES);
    }

    private void list(Context ctx) {
        var moment = live.moment();
        show(ctx, moment, null, Forms.blank(moment));
    }

    private void invite(Context ctx) {
        var typed = FormBody.read(ctx);
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var name = LookInForms.name(moment, typed);
        var purpose = typed.first("purpose").filter(telling.purposes()::contains);
        if (!access.hasManagersPin()) {
            show(ctx.status(409), moment, null, Forms.again(moment, typed));
        } else if (!name.errors().isEmpty() || purpose.isEmpty()) {
            show(ctx.status(422), moment, null, Forms.again(moment, typed));
        } else {
            var shown = shown(ctx, moment, new Invitations.Invitation(name.entry(), purpose.get()));
            show(ctx, moment, shown, Forms.blank(moment));
        }
    }

    /**
     * What the two forms of the page hold.
     *
     * @param device the fields of the one for a device
     * @param program what was typed into the one for a program
     */
    private record Forms(List<Field> device, AccessTelling.Typed program) {
        static Forms blank(Moment moment) {
            var telling = new AccessTelling(moment);
            return new Forms(
                    List.of(telling.nameField("", ""), telling.purposeField("", "")), AccessTelling.Typed.NOTHING);
        }

        static Forms again(Moment moment, Fields typed) {
            return new Forms(DeviceRoutes.again(moment, typed), AccessTelling.Typed.NOTHING);
        }
    }

    private static List<Field> again(Moment moment, Fields typed) {
        var telling = new AccessTelling(moment);
        var name = flaw(moment, typed);
        var chosen = typed.first("purpose").orElse("");
        var purpose = telling.purposes().contains(chosen) ? "" : moment.say("fault.not_a_choice");
        return List.of(
                telling.nameField(name.isEmpty() ? typed.first("name").orElse("") : "", name),
                telling.purposeField(chosen, purpose));
    }

    /** What is wrong with a name. */
    private static String flaw(Moment moment, Fields typed) {
        var words = new FaultWords(moment.words());
        return LookInForms.name(moment, typed).errors().stream()
                .map(words::say)
                .findFirst()
                .orElse("");
    }

    /** The door lets only names in under which this server is known. */
    private Shown shown(Context ctx, Moment moment, Invitations.Invitation invitation) {
        var code = invitations.invite(invitation);
        var isLocal = HostNames.isLoopback(String.valueOf(ctx.host()));
        var way = wayIn.get();
        var here = ctx.scheme() + "://" + ctx.host();
        var join = (isLocal ? way.map(one -> one.secure().get(0)).orElse(here) : here) + JoinRoutes.JOIN;
        var detail = isLocal && way.isEmpty()
                ? moment.say("devices.local")
                : moment.say("devices.shown.detail", join)
                        + way.filter(one -> one.fingerprint().isPresent())
                                .map(one -> " " + moment.say("devices.trust_first", one.welcome()))
                                .orElse("");
        return new Shown(moment.say("devices.shown", invitation.name()), detail, QrCode.of(join + "#" + code), code);
    }

    /** A program's key is made here and shown once; it is a device that nobody stands at. */
    private void makeKey(Context ctx) {
        var typed = FormBody.read(ctx);
        var moment = live.moment();
        var name = LookInForms.name(moment, nameOfProgram(typed));
        var scope = typed.first("scope").filter(SCOPES::contains);
        if (!access.hasManagersPin() || !name.errors().isEmpty() || scope.isEmpty()) {
            show(
                    ctx.status(access.hasManagersPin() ? 422 : 409),
                    moment,
                    null,
                    new Forms(Forms.blank(moment).device, wrong(moment, typed)));
            return;
        }
        var key = Key.fresh();
        var device = keyring.letIn(new Keyring.Fresh(name.entry(), scope.get(), key.hash(), false), moment.now());
        Noting.about(ctx, device.id());
        var shown = new Shown(
                moment.say("programs.shown", name.entry()), moment.say("programs.shown.detail"), null, key.text());
        show(ctx, moment, shown, Forms.blank(moment));
    }

    /** Two fields of one page can't both be called so. */
    private static Fields nameOfProgram(Fields typed) {
        return Fields.of(Map.of("name", typed.all("program")));
    }

    private static AccessTelling.Typed wrong(Moment moment, Fields typed) {
        var chosen = typed.first("scope").orElse("");
        return new AccessTelling.Typed(
                typed.first("program").orElse(""),
                chosen,
                flaw(moment, nameOfProgram(typed)),
                SCOPES.contains(chosen) ? "" : moment.say("fault.not_a_choice"));
    }

    private void allowPlain(Context ctx) {
        keyring.allowPlain(
                FormBody.read(ctx).first("plain").filter("yes"::equals).isPresent());
        PressRoutes.go(ctx, AccessTelling.DEVICES);
    }

    private void throwOut(Context ctx) {
        FormBody.read(ctx);
        var id = Numbered.at(ctx, "id");
        keyring.throwOut(id, live.moment().now());
        present.leave(id);
        out.accept(id);
        PressRoutes.go(ctx, AccessTelling.DEVICES);
    }

    private void show(Context ctx, Moment moment, @Nullable Shown shown, Forms forms) {
        var telling = new AccessTelling(moment);
        var in = keyring.devices().stream().filter(Keyring.Device::isIn).toList();
        var rows = in.stream()
                .map(device ->
                        telling.device(device.id(), device.name(), device.purpose(), device.joined(), seen(device)))
                .toList();
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("devices.title"), Nav.SETUP);
        var form = new Sent(
                moment.say("devices.invite"),
                AccessTelling.DEVICES,
                forms.device,
                List.of(),
                moment.say("devices.make"));
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(
                new PlainPage(
                        shell,
                        moment.say("devices.intro"),
                        access.hasManagersPin() ? "" : moment.say("devices.pin_first"),
                        shown,
                        List.of(
                                telling.part(rows.isEmpty() ? "devices.none" : "devices.in", rows),
                                Links.part(telling, moment)),
                        null,
                        List.of(form, telling.program(SCOPES, forms.program), telling.plain(keyring.allowsPlain()))),
                moment));
    }

    private @Nullable Instant seen(Keyring.Device device) {
        return present.seen(device.id()).orElse(null);
    }
}
