package rinsebell.app.door;

import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which browser a request comes from: a random number that it was given with its first page. It says nothing else. */
public final class Device {

    private static final String COOKIE = "device";
    private static final int BYTES = 16;
    private static final Pattern GIVEN = Pattern.compile("[0-9a-f]{" + 2 * BYTES + "}");
    private static final SecureRandom RANDOM = new SecureRandom();

    private Device() {}

    /** Empty for a program, and for a browser that keeps no cookies. */
    public static Optional<String> of(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE))
                .filter(id -> GIVEN.matcher(id).matches());
    }

    /** Gives a browser its number, if it has none yet. */
    public static void know(Context ctx) {
        if (of(ctx).isEmpty()) {
            byte[] id = new byte[BYTES];
            RANDOM.nextBytes(id);
            keep(ctx, COOKIE, HexFormat.of().formatHex(id));
        }
    }

    /** Lets a browser keep something of its own for a year. No script reads it, and no other site's page sends it. */
    public static void keep(Context ctx, String name, String value) {
        String secure = ctx.req().isSecure() ? "; Secure" : "";
        ctx.res()
                .addHeader(
                        "Set-Cookie",
                        name + "=" + value + "; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict" + secure);
    }
}
