package rinsebell.app.door;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What opens a link, or shows that a device is in: 144 random bits, in letters that stand in an address as they are (RFC 4648, section 5). Only its hash
 * is kept anywhere. One plain SHA-256 does: slow hashes are for what people think up, and nobody guesses this.
 */
public final class Key {
    private static final int BYTES = 18;
    private static final Pattern GIVEN = Pattern.compile("[A-Za-z0-9_-]{24}");
    private static final SecureRandom RANDOM = new SecureRandom();

    private final String text;

    private Key(String text) {
        this.text = text;
    }

    public static Key fresh() {
        var bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return new Key(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** Empty for what can't be one. */
    public static Optional<Key> read(String text) {
        return GIVEN.matcher(text).matches() ? Optional.of(new Key(text)) : Optional.empty();
    }

    /** As it stands in an address. */
    public String text() {
        return text;
    }

    /** Its SHA-256, in hex. */
    public String hash() {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.US_ASCII));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** No message shows it. */
    @Override
    public String toString() {
        return "a key";
    }
}
