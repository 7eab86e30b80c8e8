package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import rinsebell.app.door.Cookies;
import rinsebell.app.door.Door;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.trail.Noting;
import rinsebell.db.Keyring;
import rinsebell.web.Codes;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.JoinPage;
import rinsebell.web.board.Moment;

/**
 * Where a stranger comes in by an invitation. The code stands behind the number sign of its link, so no address that is sent
 * or kept has it; a script of the page sends it to be looked at, which uses nothing up. Pressing does.
 */
final class JoinRoutes implements Routes {
    static final String JOIN = "/join";

    private static final int FORBIDDEN = 403;
    private static final int UNPROCESSABLE = 422;

    private final LiveFloor live;
    private final Keyring keyring;
    private final Invitations invitations;

    JoinRoutes(LiveFloor live, Keyring keyring, Invitations invitations) {
        this.live = live;
        this.keyring = keyring;
        this.invitations = invitations;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(JOIN, ctx -> show(ctx, JoinPage.ASKING), Matter.OPEN);
        routes.post(JOIN + "/look", this::look, Matter.OPEN);
        routes.post(JOIN, this::join, Matter.COMING_IN);
    }

    /** The one page of a stranger, whatever was asked for. */
    void turnAway(Context ctx) {
        show(ctx.status(FORBIDDEN), JoinPage.ASKING);
    }

    private void look(Context ctx) {
        var moment = live.moment();
        code(ctx)
                .ifPresentOrElse(
                        code -> {
                            var page = invitations
                                    .look(code)
                                    .map(one -> JoinPage.invited(
                                            code, new AccessTelling(moment).willBe(one.name(), one.purpose())))
                                    .orElseGet(() -> wrong(moment));
                            show(page.isInvited() ? ctx : ctx.status(UNPROCESSABLE), page);
                        },
                        () -> turnAway(ctx));
    }

    /** As it was typed; empty where others could read it along and no device comes in so: then it is good no more. */
    private Optional<String> code(Context ctx) {
        var code = FormBody.read(ctx).first("code").orElse("");
        if (isPlain(ctx) && !keyring.allowsPlain()) {
            invitations.take(code);
            return Optional.empty();
        }
        return Optional.of(code);
    }

    private static JoinPage wrong(Moment moment) {
        return JoinPage.wrong(moment.say("join.wrong"));
    }

    /** A device that is in already, and comes in as something else, is out as what it was. */
    private void join(Context ctx) {
        code(ctx).ifPresentOrElse(code -> join(ctx, invitations.take(code)), () -> turnAway(ctx));
    }

    private void join(Context ctx, Optional<Invitations.Invitation> invitation) {
        var moment = live.moment();
        if (invitation.isEmpty()) {
            show(ctx.status(UNPROCESSABLE), wrong(moment));
            return;
        }
        var key = Key.fresh();
        var before = Access.key(ctx, Access.DEVICE).flatMap(shown -> keyring.device(shown.hash()));
        var fresh = keyring.letIn(
                new Keyring.Fresh(invitation.get().name(), invitation.get().purpose(), key.hash(), isPlain(ctx)),
                moment.now());
        Noting.about(ctx, fresh.id());
        before.ifPresent(device -> keyring.throwOut(device.id(), moment.now()));
        Cookies.keep(ctx, Access.DEVICE, key.text());
        ctx.redirect(home(invitation.get().purpose()), HttpStatus.SEE_OTHER);
    }

    /** Where a device that is for something begins. */
    private static String home(String purpose) {
        return switch (purpose) {
            case "basins", "desk", "pocket" -> "/" + purpose;
            case "wall" -> "/";
            default -> Codes.place(purpose).isPresent() ? "/chairs/" + purpose.substring("chair-".length()) : "/";
        };
    }

    private static boolean isPlain(Context ctx) {
        return !ctx.req().isSecure() && !Door.isAtTheServer(ctx);
    }

    private void show(Context ctx, JoinPage page) {
        ctx.header("Cache-Control", "no-store");
        ctx.html(live.page(isPlain(ctx) ? page.plainly(keyring.allowsPlain()) : page, live.moment()));
    }
}
