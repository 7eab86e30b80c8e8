package rinsebell.app.access;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.security.RouteRole;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Cookies;
import rinsebell.app.door.Door;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.db.Keyring;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;

/**
 * Looks at everybody before a route does: whether the device is in, and for what is private whether somebody gave a PIN
 * there who may. A route that says of no {@link Matter} what it is about answers nobody.
 */
public final class Access implements Routes {
    /** The cookie by which a device shows that it is in. */
    static final String DEVICE = "device";

    /** The cookie of whoever gave a PIN. */
    static final String UNLOCKED = "unlocked";

    private static final String HTML = "<!doctype html>\n<html";

    /** Tells a script why. */
    static final String REFUSED = "Rinsebell-Refused";

    private final Keyring keyring;
    private final Unlocked unlocked;
    private final Present present;
    private final Supplier<Floor> floor;
    private final About about;
    private final Away away;

    /** Answers whoever may not come in or not do that. */
    @FunctionalInterface
    interface Away {
        void answer(Context ctx, ProblemCode why, Matter matter);
    }

    /** @param floor as it is now */
    Access(Keyring keyring, Unlocked unlocked, Present present, Supplier<Floor> floor, Away away) {
        this.present = present;
        this.keyring = keyring;
        this.unlocked = unlocked;
        this.floor = floor;
        this.about = new About(floor);
        this.away = away;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.beforeMatched(this::check);
        routes.afterMatched(Access::mark);
    }

    /**
     * A page that a PIN has opened says so of itself, and its script locks it again; one that came over plain HTTP says what
     * that costs.
     */
    private static void mark(Context ctx) {
        String opened = Caller.openedFor(ctx)
                .map(matter -> " data-private=\"" + matter + "\"")
                .orElse("");
        String marks = opened + (isPlain(ctx, Caller.of(ctx)) ? " data-plain" : "");
        String page = marks.isEmpty() ? null : ctx.result();
        if (page != null && page.startsWith(HTML)) {
            ctx.result(HTML + marks + page.substring(HTML.length()));
        }
    }

    private void check(Context ctx) {
        Matter matter = matter(ctx);
        matter.remember(ctx);
        Optional<Caller> caller = caller(ctx);
        caller.ifPresent(known -> known.remember(ctx));
        if (matter.isOpen()) {
            return;
        }
        caller.ifPresent(known -> present.see(known.device()));
        Optional<ProblemCode> why = caller.isEmpty() ? Optional.of(unknown(ctx)) : refused(ctx, caller.get(), matter);
        if (why.isPresent()) {
            refuse(ctx, why.get(), matter);
        } else if (matter.isPrivate() && caller.flatMap(Caller::unlocked).isPresent()) {
            Caller.open(ctx, matter);
            // Going back in the browser must not show it once it is locked.
            ctx.header("Cache-Control", "no-store");
        }
    }

    private static ProblemCode unknown(Context ctx) {
        return ProgramKey.isShown(ctx) ? ProblemCode.KEY_UNKNOWN : ProblemCode.STRANGER;
    }

    private void refuse(Context ctx, ProblemCode why, Matter matter) {
        ctx.header(REFUSED, why.code());
        ProgramKey.challenge(ctx, why);
        if (why == ProblemCode.STRANGER && Cookies.of(ctx, DEVICE).isPresent()) {
            // What a lost device has kept of the salon goes with it.
            ctx.header("Clear-Site-Data", "\"cache\", \"storage\"");
        }
        away.answer(ctx, why, matter);
        ctx.skipRemainingHandlers();
    }

    /** Whether others on the network could read along. */
    static boolean isPlain(Context ctx, Caller caller) {
        return caller.isDevice() && !ctx.req().isSecure() && !Door.isAtTheServer(ctx);
    }

    private Matter matter(Context ctx) {
        // Nothing runs for it, and nothing is told but that there is such a page.
        return ctx.method() == HandlerType.HEAD ? Matter.FLOOR : about.of(ctx, of(ctx.routeRoles()));
    }

    /** What a route says of itself. */
    static Matter of(Set<RouteRole> roles) {
        return roles.stream()
                .map(Matter.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a route says of nothing what it is about"));
    }

    private Optional<Caller> caller(Context ctx) {
        if (ProgramKey.isShown(ctx)) {
            return ProgramKey.of(ctx).flatMap(this::device).map(Caller::of).filter(Caller::isProgram);
        }
        Optional<Caller> device = Door.isAtTheServer(ctx)
                ? Optional.of(Caller.own())
                : key(ctx, DEVICE)
                        .flatMap(this::device)
                        // What was read along over plain HTTP opens nothing over HTTPS.
                        .filter(known -> known.plain() != ctx.req().isSecure())
                        .map(Caller::of)
                        .filter(known -> !known.isProgram());
        return device.map(caller -> caller.with(person(ctx, caller).orElse(null)));
    }

    private Optional<Keyring.Device> device(Key key) {
        return keyring.device(key.hash());
    }

    /** A feed that connects again by itself is no sign that somebody is there. */
    private Optional<StaffId> person(Context ctx, Caller caller) {
        boolean isUse = Matter.of(ctx).isPrivate() && of(ctx.routeRoles()) != Matter.SIGNAL;
        return key(ctx, UNLOCKED)
                .flatMap(key -> isUse ? unlocked.use(key, caller.device()) : unlocked.person(key, caller.device()));
    }

    static Optional<Key> key(Context ctx, String cookie) {
        return Cookies.of(ctx, cookie).flatMap(Key::read);
    }

    private Optional<ProblemCode> refused(Context ctx, Caller caller, Matter matter) {
        if (caller.isProgram()) {
            return isPlain(ctx, caller)
                    ? Optional.of(ProblemCode.READ_ALONG)
                    : ProgramKey.isFor(ctx, caller, matter)
                            ? Optional.empty()
                            : Optional.of(ProblemCode.KEY_NOT_FOR_THAT);
        }
        if (isPlain(ctx, caller) && !keyring.allowsPlain()) {
            return Optional.of(ProblemCode.STRANGER);
        }
        return matter.isPrivate() ? refusedPrivate(ctx, caller, matter) : Optional.empty();
    }

    private Optional<ProblemCode> refusedPrivate(Context ctx, Caller caller, Matter matter) {
        if (isPlain(ctx, caller)) {
            return Optional.of(ProblemCode.READ_ALONG);
        }
        if (isOpenYet(caller)) {
            return Optional.empty();
        }
        Optional<Role> role = caller.unlocked().flatMap(this::role);
        if (role.isEmpty()) {
            return Optional.of(ProblemCode.LOCKED);
        }
        return matter.allows(role.get()) ? Optional.empty() : Optional.of(ProblemCode.NOT_YOURS);
    }

    /** Until a manager has chosen a PIN the server's own screen is open, or the first device of one that has no screen. */
    boolean isOpenYet(Caller caller) {
        return (caller.isOwn() || caller.isFirst()) && !hasManagersPin();
    }

    boolean hasManagersPin() {
        takeResets();
        return keyring.pins().stream()
                .anyMatch(pin -> role(pin.person()).filter(Role.MANAGER::equals).isPresent());
    }

    /** Takes the managers' PINs away if that was asked for at the console since. */
    void takeResets() {
        if (keyring.resetIfAsked(managers())) {
            unlocked.lockAll(managers()::contains);
        }
    }

    private List<StaffId> managers() {
        return floor.get().salon().working().stream()
                .filter(member -> member.role() == Role.MANAGER)
                .map(StaffMember::id)
                .toList();
    }

    /** Of somebody who still works here. */
    Optional<Role> role(StaffId person) {
        return floor.get().salon().workingMember(person).map(StaffMember::role);
    }
}
