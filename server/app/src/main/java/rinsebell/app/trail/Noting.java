package rinsebell.app.trail;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Door;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.db.Trail;
import rinsebell.floor.salon.StaffId;

/**
 * Notes what is answered: each look at what is about people, and each thing that is done beside the floor. It is one hook
 * behind all routes and goes by their {@link Matter}, so no route can forget it.
 */
public final class Noting implements Routes {
    private static final String ABOUT = "about";
    private static final int OK = 200;
    private static final int REDIRECT = 300;

    /** They only show what is typed, or keep a page open. */
    private static final Set<String> NOTHING_DONE = Set.of("preview", "stay");

    private final TrailBook book;
    private final Supplier<Instant> clock;
    private final Function<Context, Optional<StaffId>> named;

    /**
     * @param clock the salon's
     * @param named who works at the device, where no PIN was given
     */
    public Noting(Trail trail, Supplier<Instant> clock, Function<Context, Optional<StaffId>> named) {
        this.book = new TrailBook(trail::keep);
        this.clock = clock;
        this.named = named;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.afterMatched(this::note);
    }

    /** Says which of its kind a request was about, where its address does not. */
    public static void about(Context ctx, long number) {
        ctx.attribute(ABOUT, number);
    }

    /** Notes what somebody's role did not allow. */
    public void refused(Context ctx, int status) {
        book.keepSoon(step(ctx, status));
    }

    private void note(Context ctx) {
        var matter = Matter.of(ctx);
        int status = ctx.statusCode();
        if (!matter.isLookingNoted() && !matter.isDoingNoted()) {
            return;
        }
        var step = step(ctx, status);
        if (step.isLook()) {
            if (matter.isLookingNoted() && status >= OK && status < REDIRECT) {
                book.keep(step);
            }
        } else if (!Door.isReading(ctx) && matter.isDoingNoted() && !NOTHING_DONE.contains(last(ctx.path()))) {
            book.keepSoon(step);
        }
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private Trail.Step step(Context ctx, int status) {
        var caller = Caller.of(ctx);
        var endpoint = ctx.endpoints().matchedHttpEndpoint();
        var pattern = endpoint == null ? "" : endpoint.path;
        return new Trail.Step(
                clock.get(),
                caller.code(),
                caller.unlocked().or(() -> named.apply(ctx)).orElse(null),
                Matter.of(ctx).name(),
                ctx.method() + " " + pattern,
                subject(ctx),
                status);
    }

    private static @Nullable Long subject(Context ctx) {
        Long said = ctx.attribute(ABOUT);
        return said != null
                ? said
                : ctx.pathParamMap().values().stream()
                        .flatMap(text -> Numbered.number(text).stream())
                        .findFirst()
                        .or(() -> Optional.ofNullable(ctx.queryParam("client")).flatMap(Numbered::number))
                        .orElse(null);
    }
}
