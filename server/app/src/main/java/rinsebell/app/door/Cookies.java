package rinsebell.app.door;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.server.Request;

/**
 * What a browser keeps for this server. No script reads what opens anything, and no other site's page sends it. Over HTTPS names begin with
 * {@code __Host-}, which no page of another port, of another name or of plain HTTP can set (RFC 6265bis, section 4.1.3.2);
 * so what was set over plain HTTP, where others read along, opens nothing over HTTPS.
 */
public final class Cookies {

    private static final Duration LONG = Duration.ofDays(365);

    private Cookies() {}

    /** What the browser kept under this name; empty when it kept nothing. */
    public static Optional<String> of(Context ctx, String name) {
        return Optional.ofNullable(ctx.cookie(named(ctx.req().isSecure(), name)));
    }

    /** The same before there is a route. */
    public static Optional<String> of(Request request, String name) {
        String named = named(request.isSecure(), name);
        return Request.getCookies(request).stream()
                .filter(cookie -> cookie.getName().equals(named))
                .map(HttpCookie::getValue)
                .findFirst();
    }

    /** Lets it be kept for a year. */
    public static void keep(Context ctx, String name, String value) {
        keep(ctx, name, value, LONG);
    }

    /** @param value of letters and digits, {@code -} and {@code _} */
    public static void keep(Context ctx, String name, String value, Duration age) {
        set(ctx, name, value, age, "; HttpOnly");
    }

    /** What opens nothing, and the scripts of our pages read. */
    public static void keepOpenly(Context ctx, String name, String value, Duration age) {
        set(ctx, name, value, age, "");
    }

    private static void set(Context ctx, String name, String value, Duration age, String hidden) {
        String secure = ctx.req().isSecure() ? "; Secure" : "";
        ctx.res()
                .addHeader(
                        "Set-Cookie",
                        named(ctx.req().isSecure(), name) + "=" + value + "; Path=/; Max-Age=" + age.toSeconds()
                                + hidden + "; SameSite=Strict" + secure);
    }

    /** Has it forgotten. */
    public static void drop(Context ctx, String name) {
        keep(ctx, name, "", Duration.ZERO);
    }

    private static String named(boolean secure, String name) {
        return secure ? "__Host-" + name : name;
    }
}
