package rinsebell.app.door;

import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which browser a request comes from: a random number that it was given with its first page. It opens nothing. */
public final class Browser {

    private static final String COOKIE = "browser";
    private static final int BYTES = 16;
    private static final Pattern GIVEN = Pattern.compile("[0-9a-f]{" + 2 * BYTES + "}");
    private static final SecureRandom RANDOM = new SecureRandom();

    private Browser() {}

    /** Empty for a program, and for a browser that keeps no cookies. */
    public static Optional<String> of(Context ctx) {
        return Cookies.of(ctx, COOKIE).filter(id -> GIVEN.matcher(id).matches());
    }

    /** Gives a browser its number, if it has none yet. */
    public static void know(Context ctx) {
        if (of(ctx).isEmpty()) {
            byte[] id = new byte[BYTES];
            RANDOM.nextBytes(id);
            Cookies.keep(ctx, COOKIE, HexFormat.of().formatHex(id));
        }
    }
}
