package rinsebell.app.feed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.ExecutorService;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.thread.Threads;

/** {@code GET /feed?board=NAME}: the event stream of one board. */
public final class FeedRoutes implements Routes, AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(FeedRoutes.class);

    private final Feed feed;
    private final FeedSource source;
    private final ExecutorService writers = Threads.oneForEachTask("screen");

    public FeedRoutes(Feed feed, FeedSource source) {
        this.feed = feed;
        this.source = source;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/feed", this::stream);
    }

    /** Stops the writers; the feed has ended their streams before. */
    @Override
    public void close() {
        writers.shutdownNow();
    }

    private void stream(Context ctx) throws IOException {
        String board = Objects.requireNonNullElse(ctx.queryParam("board"), "");
        if (source.draw(board).isEmpty()) {
            throw Problem.of(ProblemCode.UNKNOWN_BOARD).thrown();
        }
        Screen screen = feed.join(board, cutOff(ctx.req()))
                .orElseThrow(() -> Problem.of(ProblemCode.TOO_MANY_SCREENS).thrown());
        try {
            startStream(ctx.res());
            ctx.async(task -> task.executor = writers, () -> write(screen, ctx.res()));
        } catch (IOException | RuntimeException e) {
            feed.leave(screen);
            throw e;
        }
    }

    private static void startStream(HttpServletResponse response) throws IOException {
        response.setContentType("text/event-stream");
        response.setCharacterEncoding("UTF-8");
        // The connection carries nothing after the stream, so cutting it off can never hit another answer.
        response.setHeader("Connection", "close");
        // A proxy that gathers answers before it passes them on would make every bell late.
        response.setHeader("X-Accel-Buffering", "no");
        response.flushBuffer();
    }

    private void write(Screen screen, HttpServletResponse response) throws InterruptedException {
        try {
            screen.writeTo(response.getOutputStream());
        } catch (IOException gone) {
            LOG.debug("a screen of {} went away: {}", screen.board(), gone.toString());
        } finally {
            feed.leave(screen);
        }
    }

    /** Closing the endpoint is the one thing that ends a write which waits for a reader that never reads. */
    private static Runnable cutOff(HttpServletRequest request) {
        EndPoint connection = ServletContextRequest.getServletContextRequest(request)
                .getConnectionMetaData()
                .getConnection()
                .getEndPoint();
        return connection::close;
    }
}
