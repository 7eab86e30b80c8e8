package rinsebell.app.door;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.Request;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.DatabaseAway;

/** The checks that every request passes, and the answers to those that do not or that fail later. */
public final class Door {

    private static final Logger LOG = LoggerFactory.getLogger(Door.class);
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);
    private static final Set<HandlerType> WRITING =
            Set.of(HandlerType.POST, HandlerType.PUT, HandlerType.PATCH, HandlerType.DELETE);

    /** The ports that browsers leave out (RFC 9110, sections 4.2.1 and 4.2.2). */
    private static final int HTTP_PORT = 80;

    private static final int HTTPS_PORT = 443;

    private static final String AT_THE_SERVER = "at the server";

    /** What a proxy says of whom it asks for (RFC 7239, and the custom before it). */
    private static final Set<String> PASSED_ON = Set.of("Forwarded", "X-Forwarded-For", "Via");

    private final HostNames names;
    private final ProblemText text;
    private final boolean isBehindProxy;
    private final Guard guard;

    /**
     * @param devices whether a request comes from a device that is in
     * @param isBehindProxy whether whatever comes from this machine may come from another: then nobody is at the server
     *     itself
     */
    public Door(HostNames names, ProblemText text, Predicate<Request> devices, boolean isBehindProxy) {
        this.names = names;
        this.text = text;
        this.isBehindProxy = isBehindProxy;
        this.guard = new Guard(devices, new ProtocolProblems(text), CrowdLimits.usual());
    }

    /** Counts who connects; every port needs it. */
    Guard guard() {
        return guard;
    }

    /** Puts the door before every route. */
    public void addTo(JavalinConfig config) {
        config.http.prefer405over404 = true;
        config.router.javaLangErrorHandler(this::answerError);
        config.router.handlerWrapper(endpoint -> ctx -> {
            endpoint.handler.handle(ctx);
            nameLetters(ctx);
        });
        config.jetty.modifyHttpConfiguration(Protocol::tighten);
        config.jetty.modifyServer(server -> server.setErrorHandler(new ProtocolProblems(text)));
        config.jetty.modifyServer(guard::standBefore);
        config.jetty.modifyServletContextHandler(handler -> handler.setErrorHandler(new ProtocolProblems(text)));
        config.requestLogger.http(Door::log);
        addTo(config.routes);
    }

    private void addTo(RoutesConfig routes) {
        routes.before(this::check);
        routes.exception(ProblemException.class, (e, ctx) -> answer(e.problem(), ctx));
        routes.exception(DatabaseAway.class, this::answerAway);
        routes.exception(HttpResponseException.class, this::answerLibrary);
        routes.exception(Exception.class, this::answerBug);
    }

    /** Text says in which letters it is (RFC 9110, section 8.3.2), so that no browser has to guess. */
    private static void nameLetters(Context ctx) {
        String type = ctx.res().getContentType();
        boolean answers = ctx.resultInputStream() != null;
        if (answers && type != null && type.startsWith("text/") && !type.contains("charset")) {
            ctx.contentType(type + "; charset=utf-8");
        }
    }

    private void check(Context ctx) {
        ctx.attribute(AT_THE_SERVER, !isBehindProxy && isFromHere(ctx));
        String host = host(ctx);
        boolean secure = ctx.req().isSecure();
        if (!names.allow(host, ctx.req().getLocalPort(), secure ? HTTPS_PORT : HTTP_PORT)) {
            throw Problem.of(ProblemCode.OTHER_HOST).thrown();
        }
        if (!READING.contains(ctx.method()) && !WRITING.contains(ctx.method())) {
            return; // No route has such a method, and the router says so.
        }
        Origins.Said said = new Origins.Said(
                ctx.header("Origin"), ctx.header("Sec-Fetch-Site"), ctx.header("Sec-Fetch-Mode"), needsPreflight(ctx));
        String ours = (secure ? "https://" : "http://") + host;
        boolean reads = isReading(ctx);
        if (!(reads ? Origins.allowReading(said, ours) : Origins.allow(said, ours))) {
            throw Problem.of(ProblemCode.OTHER_ORIGIN).thrown();
        }
        if (!reads) {
            Bodies.check(ctx);
        }
    }

    /**
     * Whether a browser on the machine itself asks: by a name that no other machine finds, and from no other address. What
     * came through something in between is somebody else's.
     */
    public static boolean isAtTheServer(Context ctx) {
        return Boolean.TRUE.equals(ctx.attribute(AT_THE_SERVER));
    }

    /** No browser speaks HTTP/1.0 any more; programs that pass on what others ask often do. */
    private static boolean isFromHere(Context ctx) {
        return HostNames.isLoopback(host(ctx))
                && isLoopback(ctx.req().getRemoteAddr())
                && !ctx.req().getProtocol().equals("HTTP/1.0")
                && PASSED_ON.stream().allMatch(header -> ctx.header(header) == null);
    }

    /** Whether it asks and changes nothing (RFC 9110, section 9.2.1). */
    public static boolean isReading(Context ctx) {
        return READING.contains(ctx.method());
    }

    /** The address of a connection, so nothing is looked up. */
    private static boolean isLoopback(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** HTTP/2 names the house in {@code :authority} instead of {@code Host} (RFC 9113, section 8.3.1). */
    private static String host(Context ctx) {
        Request request = ServletContextRequest.getServletContextRequest(ctx.req());
        boolean inAuthority = request.getConnectionMetaData().getHttpVersion() == HttpVersion.HTTP_2;
        String host = inAuthority ? request.getHttpURI().getAuthority() : ctx.header("Host");
        return Objects.requireNonNullElse(host, "");
    }

    /** Neither this header nor this type is among those that a page may send anywhere (Fetch, "CORS-safelisted"). */
    private static boolean needsPreflight(Context ctx) {
        return ctx.header("Idempotency-Key") != null || Bodies.isJson(ctx);
    }

    private void answer(Problem problem, Context ctx) {
        ctx.status(problem.code().status());
        problem.code().retryAfterSeconds().ifPresent(seconds -> ctx.header("Retry-After", String.valueOf(seconds)));
        ctx.contentType(ProblemText.typeFor(ctx.path()));
        ctx.result(text.write(problem, ctx.path()).getBytes(StandardCharsets.UTF_8));
    }

    private void answerLibrary(HttpResponseException e, Context ctx) {
        String allowed = e.getDetails().get("availableMethods");
        if (allowed != null) {
            ctx.header("Allow", allowed);
        }
        answer(Problem.of(ProblemCode.ofStatus(e.getStatus())), ctx);
    }

    private void answerAway(DatabaseAway e, Context ctx) {
        LOG.error("{} {} found {}", ctx.method(), route(ctx), e.getMessage());
        answer(Problem.of(ProblemCode.RECORDS_AWAY), ctx);
    }

    private void answerBug(Exception e, Context ctx) {
        LOG.error("{} {} failed", ctx.method(), route(ctx), e);
        answer(Problem.of(ProblemCode.BUG), ctx);
    }

    /** An error of the machine itself, such as a stack that ran over: logged, and answered without a page. */
    private void answerError(HttpServletResponse response, Error e) {
        LOG.error("a request failed", e);
        response.setStatus(ProblemCode.BUG.status());
        response.setContentType(ProblemText.HTML_TYPE);
        try {
            response.getWriter().print(text.write(Problem.of(ProblemCode.BUG), "/"));
        } catch (IOException gone) {
            LOG.debug("nobody waits for the answer any more", gone);
        }
    }

    /** Says what was asked for by the pattern of its route, never by the address, which may tell of a person. */
    private static void log(Context ctx, Float millis) {
        LOG.debug("{} {} {} in {} ms", ctx.method(), route(ctx), ctx.statusCode(), millis);
    }

    private static String route(Context ctx) {
        var endpoint = ctx.endpoints().lastHttpEndpoint();
        return endpoint == null ? "(no route)" : endpoint.path;
    }
}
