package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.press.PressRoutes;
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
        routes.post(AccessTelling.DEVICES + "/plain", this::allowPlain, Matter.DEVICES);
        routes.post(AccessTelling.DEVICES + "/{id}/throw-out", this::throwOut, Matter.DEVICES);
    }

    private void list(Context ctx) {
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        show(ctx, moment, null, List.of(telling.nameField("", ""), telling.purposeField("", "")));
    }

    private void invite(Context ctx) {
        var typed = FormBody.read(ctx);
        var moment = live.moment();
        var telling = new AccessTelling(moment);
        var name = LookInForms.name(moment, typed);
        var purpose = typed.first("purpose").filter(telling.purposes()::contains);
        if (!access.hasManagersPin()) {
            show(ctx.status(409), moment, null, again(moment, typed));
        } else if (!name.errors().isEmpty() || purpose.isEmpty()) {
            show(ctx.status(422), moment, null, again(moment, typed));
        } else {
            var shown = shown(ctx, moment, new Invitations.Invitation(name.entry(), purpose.get()));
            show(ctx, moment, shown, List.of(telling.nameField("", ""), telling.purposeField("", "")));
        }
    }

    private static List<Field> again(Moment moment, Fields typed) {
        var telling = new AccessTelling(moment);
        var words = new FaultWords(moment.words());
        var name = LookInForms.name(moment, typed).errors().stream()
                .map(words::say)
                .findFirst()
                .orElse("");
        var chosen = typed.first("purpose").orElse("");
        var purpose = telling.purposes().contains(chosen) ? "" : moment.say("fault.not_a_choice");
        return List.of(
                telling.nameField(name.isEmpty() ? typed.first("name").orElse("") : "", name),
                telling.purposeField(chosen, purpose));
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
        return new Shown(moment.say("devices.shown", invitation.name()), detail, QrCode.of(join + "/" + code), code);
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

    private void show(Context ctx, Moment moment, @Nullable Shown shown, List<Field> fields) {
        var telling = new AccessTelling(moment);
        var in = keyring.devices().stream().filter(Keyring.Device::isIn).toList();
        var rows = in.stream()
                .map(device ->
                        telling.device(device.id(), device.name(), device.purpose(), device.joined(), seen(device)))
                .toList();
        var shell = new LivePages(moment, PageRoutes.look(ctx), null).still(moment.say("devices.title"), Nav.SETUP);
        var form = new Sent(
                moment.say("devices.invite"), AccessTelling.DEVICES, fields, List.of(), moment.say("devices.make"));
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
                        List.of(form, telling.plain(keyring.allowsPlain()))),
                moment));
    }

    private @Nullable Instant seen(Keyring.Device device) {
        return present.seen(device.id()).orElse(null);
    }
}
