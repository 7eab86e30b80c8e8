package rinsebell.app.access;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.server.Request;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Door;
import rinsebell.app.door.Key;
import rinsebell.app.door.Matter;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.ProblemText;

/** The key by which a program asks, as a bearer token (RFC 6750, section 2.1); no browser sends one by itself. */
final class ProgramKey {
    private static final String HEADER = "Authorization";

    /** The name of a scheme has no case (RFC 9110, section 11.1). */
    private static final Pattern BEARER = Pattern.compile("(?i)bearer +(\\S+)");

    private ProgramKey() {}

    /** Whether something is shown, which then counts alone: no cookie, and not where it comes from. */
    static boolean isShown(Context ctx) {
        return ctx.header(HEADER) != null;
    }

    static Optional<Key> of(Context ctx) {
        return read(ctx.header(HEADER));
    }

    /** The same before any route looks at it. */
    static Optional<Key> of(Request request) {
        return read(request.getHeaders().get(HEADER));
    }

    private static Optional<Key> read(@Nullable String header) {
        return Optional.ofNullable(header)
                .map(BEARER::matcher)
                .filter(Matcher::matches)
                .flatMap(shown -> Key.read(shown.group(1)));
    }

    /** A program sees the floor, and presses on it if its key is for that; what is private is opened by a person. */
    static boolean isFor(Context ctx, Caller program, Matter matter) {
        boolean reads = Door.isReading(ctx);
        return ProblemText.forPrograms(ctx.path())
                && (matter == Matter.FLOOR || matter == Matter.SIGNAL)
                && (reads || program.mayPress());
    }

    /** Says what is wanted (RFC 6750, section 3.1). */
    static void challenge(Context ctx, ProblemCode why) {
        if (why == ProblemCode.KEY_UNKNOWN) {
            ctx.header("WWW-Authenticate", "Bearer error=\"invalid_token\"");
        } else if (why == ProblemCode.KEY_NOT_FOR_THAT) {
            ctx.header("WWW-Authenticate", "Bearer error=\"insufficient_scope\"");
        }
    }
}
