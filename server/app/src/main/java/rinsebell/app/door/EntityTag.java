package rinsebell.app.door;

import io.javalin.http.Context;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * By what a client that holds some content knows whether it is still the same (RFC 9110, section 8.8.3).
 *
 * @param text as a header has it, in quotes
 */
public record EntityTag(String text) {

    private static final int BYTES = 16;

    /** The tag of content whose address is another when it changes. */
    public static EntityTag ofAddress(String path) {
        return new EntityTag('"' + Integer.toHexString(path.hashCode()) + '"');
    }

    /** The tag of this content and of no other. */
    public static EntityTag of(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return new EntityTag('"' + HexFormat.of().formatHex(digest, 0, BYTES) + '"');
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Whether the client names this content among what it has (RFC 9110, section 13.1.2: compared weakly). */
    public boolean isHeldBy(Context ctx) {
        String known = ctx.header("If-None-Match");
        return known != null
                && Arrays.stream(known.split(","))
                        .map(String::strip)
                        .anyMatch(one -> one.equals("*") || one.equals(text) || one.equals("W/" + text));
    }
}
