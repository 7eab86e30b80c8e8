package rinsebell.app.feed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.server.Request;
import rinsebell.app.door.Browser;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.door.Wire;

/**
 * {@code GET /feed?board=NAME}: the event stream of one board; {@code GET /feed/once?board=NAME}: what it begins with, and
 * then the end, for whoever has no connection to spare for a stream.
 */
public final class FeedRoutes implements Routes {

    private final Feed feed;
    private final FeedSource source;
    private final BrowserStreams browsers = new BrowserStreams();
    private final DeviceStreams devices = new DeviceStreams();

    public FeedRoutes(Feed feed, FeedSource source) {
        this.feed = feed;
        this.source = source;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/feed", this::stream, Matter.SIGNAL);
        routes.get("/feed/once", this::once, Matter.SIGNAL);
    }

    private String board(Context ctx) {
        String board = Objects.requireNonNullElse(ctx.queryParam("board"), "");
        if (!source.knows(board)) {
            throw Problem.of(ProblemCode.UNKNOWN_BOARD).thrown();
        }
        return board;
    }

    private void once(Context ctx) {
        var over = over(ctx);
        var begun = feed.beginning(board(ctx));
        var answered = new CompletableFuture<Void>();
        var unused = begun.whenComplete((events, failure) -> {
            if (over.get()) {
                return;
            }
            if (failure != null) {
                answered.completeExceptionally(failure);
                return;
            }
            eventStream(ctx.res());
            ctx.result(events);
            answered.complete(null);
        });
        ctx.future(() -> answered);
    }

    /** A browser that hangs up ends its requests itself: from then on nothing is left to be answered. */
    private static AtomicBoolean over(Context ctx) {
        var over = new AtomicBoolean();
        Request.addCompletionListener(
                ServletContextRequest.getServletContextRequest(ctx.req()), failure -> over.set(true));
        return over;
    }

    private void stream(Context ctx) throws IOException {
        Wire wire = Wire.of(ServletContextRequest.getServletContextRequest(ctx.req()));
        Seat seat = seat(ctx, board(ctx), wire);
        devices.add(Caller.of(ctx).device(), wire);
        try {
            if (!wire.isShared()) {
                // The connection carries nothing after the stream, so cutting it off can never hit another answer.
                ctx.res().setHeader("Connection", "close");
            }
            startStream(ctx.res());
            ctx.future(() -> written(seat, ctx));
        } catch (IOException | RuntimeException e) {
            leave(seat);
            throw e;
        }
    }

    /** Ends every stream of a device that was thrown out. */
    public void throwOut(long device) {
        devices.cutOff(device);
    }

    /** @param browser whose stream it is, where its streams are counted */
    private record Seat(Screen screen, Optional<String> browser, Wire wire) {}

    private Seat seat(Context ctx, String board, Wire wire) {
        Optional<String> browser = wire.isShared() ? Optional.empty() : Browser.of(ctx);
        if (browser.filter(device -> !browsers.take(device, wire)).isPresent()) {
            throw Problem.of(ProblemCode.TOO_MANY_TABS).thrown();
        }
        Optional<Screen> screen = feed.join(board, wire::cutOff);
        if (screen.isEmpty()) {
            browser.ifPresent(device -> browsers.giveBack(device, wire));
        }
        return new Seat(
                screen.orElseThrow(
                        () -> Problem.of(ProblemCode.TOO_MANY_SCREENS).thrown()),
                browser,
                wire);
    }

    private void leave(Seat seat) {
        devices.remove(seat.wire());
        feed.leave(seat.screen());
        seat.browser().ifPresent(device -> browsers.giveBack(device, seat.wire()));
    }

    private static void eventStream(HttpServletResponse response) {
        response.setContentType("text/event-stream");
        response.setCharacterEncoding("UTF-8");
    }

    private static void startStream(HttpServletResponse response) throws IOException {
        eventStream(response);
        // A proxy that gathers answers before it passes them on would make every bell late.
        response.setHeader("X-Accel-Buffering", "no");
        response.flushBuffer();
    }

    /** Past the servlet's own stream, which would hold a thread for each screen. */
    private CompletableFuture<Void> written(Seat seat, Context ctx) {
        var request = ServletContextRequest.getServletContextRequest(ctx.req());
        var over = over(ctx);
        var answered = new CompletableFuture<Void>();
        var unused = seat.screen().writeTo(request.getServletContextResponse()).thenRun(() -> {
            leave(seat);
            if (!over.get()) {
                answered.complete(null);
            }
        });
        return answered;
    }
}
