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
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.ProblemText;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.trust.WayIn;
import rinsebell.db.Keyring;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.visit.VisitId;

/** Everything about who may come in, put together. */
public final class Entrance {
    private final LiveFloor live;
    private final Keyring keyring;
    private final Invitations invitations;
    private final Access access;
    private final JoinRoutes join;
    private final UnlockRoutes unlock;
    private final List<Routes> routes;

    /**
     * @param nanos a clock that nobody can set
     * @param out is told the number of each device that is thrown out
     * @param wayIn how other devices reach the server; empty where they can't
     */
    public Entrance(
            Keyring keyring, LiveFloor live, LongSupplier nanos, LongConsumer out, Supplier<Optional<WayIn>> wayIn) {
        this.live = live;
        Unlocked unlocked = new Unlocked(nanos);
        Guesses guesses = new Guesses(nanos);
        this.keyring = keyring;
        invitations = new Invitations(nanos);
        Present present = new Present(() -> Instant.ofEpochMilli(live.beat().now()));
        access = new Access(
                keyring, unlocked, present, () -> live.snapshot().floor(), this::isAboutWhatIsOver, this::turnAway);
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
                            out.accept(device);
                        },
                        wayIn),
                new PinRoutes(live, keyring, access, unlocked, guesses),
                new RightsRoutes(live),
                new MeRoutes(live));
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

    public List<Routes> routes() {
        return routes;
    }

    /** Whether a request comes from a device that is in; for whoever shares the server out. */
    public Predicate<Request> known() {
        return new Known(keyring);
    }

    /** Programs are told in their own form, and so is whatever asks for a part of a page. */
    private void turnAway(Context ctx, ProblemCode why, Matter matter) {
        if (ProblemText.forPrograms(ctx.path())
                || ctx.header("Rinsebell-Part") != null
                || why == ProblemCode.READ_ALONG) {
            throw Problem.of(why).thrown();
        }
        if (why == ProblemCode.STRANGER) {
            join.turnAway(ctx);
        } else {
            unlock.ask(ctx, matter, why == ProblemCode.NOT_YOURS);
        }
    }

    private boolean isAboutWhatIsOver(Context ctx) {
        String resource = ctx.path().replaceFirst("^/api", "").replaceFirst("^/([a-z-]*).*$", "$1");
        Floor floor = live.snapshot().floor();
        return switch (resource) {
            case "visits" ->
                number(ctx).map(VisitId::new).filter(id -> isOver(floor, id)).isPresent();
            case "facts" ->
                number(ctx)
                        .flatMap(floor::fact)
                        .map(Fact::stream)
                        .filter(stream -> isOver(floor, stream))
                        .isPresent();
            default -> false;
        };
    }

    private static Optional<Long> number(Context ctx) {
        String id = ctx.pathParamMap().get("id");
        return Numbered.number(id == null ? ctx.pathParamMap().get("visit") : id);
    }

    private static boolean isOver(Floor floor, Stream stream) {
        return stream instanceof Stream.OfVisit of && isOver(floor, of.visit());
    }

    private static boolean isOver(Floor floor, VisitId id) {
        return floor.visit(id).filter(visit -> !visit.isOpen()).isPresent();
    }
}
