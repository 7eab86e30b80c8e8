package rinsebell.app.access;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Request;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.ProblemText;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.trail.Noting;
import rinsebell.app.trust.WayIn;
import rinsebell.db.Keyring;

/** Everything about who may come in, put together. */
public final class Entrance {
    private final LiveFloor live;
    private final Keyring keyring;
    private final Invitations invitations;
    private final Access access;
    private final JoinRoutes join;
    private final UnlockRoutes unlock;
    private final Noting noting;
    private final List<Routes> routes;

    /**
     * What is around it.
     *
     * @param nanos a clock that nobody can set
     * @param out is told the number of each device that is thrown out
     * @param wayIn how other devices reach the server; empty where they can't
     */
    public record Outside(LongSupplier nanos, LongConsumer out, Supplier<Optional<WayIn>> wayIn) {}

    public Entrance(Keyring keyring, LiveFloor live, Noting noting, Outside outside) {
        this.live = live;
        this.noting = noting;
        var nanos = outside.nanos;
        Unlocked unlocked = new Unlocked(nanos);
        Guesses guesses = new Guesses(nanos);
        this.keyring = keyring;
        invitations = new Invitations(nanos);
        Present present = new Present(() -> Instant.ofEpochMilli(live.beat().now()));
        access = new Access(keyring, unlocked, present, () -> live.snapshot().floor(), this::turnAway);
        join = new JoinRoutes(live, keyring, invitations);
        unlock = new UnlockRoutes(live, keyring, access, unlocked, guesses);
        routes = List.of(
                access,
                join,
                unlock,
                new DeviceRoutes(
                        live,
                        keyring,
                        invitations,
                        access,
                        present,
                        device -> {
                            unlocked.lockDevice(device);
                            outside.out.accept(device);
                        },
                        outside.wayIn),
                new PinRoutes(live, keyring, access, unlocked, guesses),
                new RightsRoutes(live),
                new MeRoutes(live, unlocked, this::deviceName));
    }

    /** A code for the first device of a computer without a screen; empty once somebody is in charge, or a device is in. */
    public Optional<String> firstCode() {
        boolean isNew = !access.hasManagersPin() && keyring.devices().stream().noneMatch(Keyring.Device::isIn);
        String name = live.moment().say("devices.first");
        return isNew
                ? Optional.of(
                        invitations.invite(new Invitations.Invitation(name, Caller.FIRST), Invitations.FIRST_GOOD_FOR))
                : Optional.empty();
    }

    private String deviceName(long number) {
        return keyring.name(number).orElseGet(() -> live.moment().say("trail.own"));
    }

    public List<Routes> routes() {
        return routes;
    }

    /** Whether a request comes from a device that is in; for whoever shares the server out. */
    public Predicate<Request> known() {
        return new Known(keyring);
    }

    /** Programs are told in their own form, and so is whatever asks for a part of a page. */
    private void turnAway(Context ctx, ProblemCode why, Matter matter) {
        if (why == ProblemCode.NOT_YOURS || why == ProblemCode.KEY_NOT_FOR_THAT) {
            noting.refused(ctx, why.status());
        }
        if (ProblemText.forPrograms(ctx.path())
                || ctx.header("Rinsebell-Part") != null
                || why == ProblemCode.READ_ALONG
                || ProgramKey.isShown(ctx)) {
            throw Problem.of(why).thrown();
        }
        if (why == ProblemCode.STRANGER) {
            join.turnAway(ctx);
        } else {
            unlock.ask(ctx, matter, why == ProblemCode.NOT_YOURS);
        }
    }
}
