package rinsebell.app.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Hashes of PINs by Argon2id (RFC 9106) with 19 MiB, two passes and one lane, the least that OWASP's Password Storage Cheat
 * Sheet gives. They are written as reference programs write them: {@code $argon2id$v=19$m=19456,t=2,p=1$SALT$HASH}.
 */
final class PinHash {
    static final int KIBIBYTES = 19 * 1024;
    static final int PASSES = 2;
    static final int LANES = 1;

    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final Pattern WRITTEN = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,2}),p=(\\d)\\$([A-Za-z0-9+/]{11,64})\\$([A-Za-z0-9+/]{16,128})");
    private static final SecureRandom RANDOM = new SecureRandom();

    /** Each takes 19 MiB and a core: whoever sends many at once must not take the machine from the bells. */
    private static final Semaphore ONE_AT_A_TIME = new Semaphore(1, true);

    private PinHash() {}

    static String of(String pin) {
        byte[] salt = new byte[SALT_BYTES];
        RANDOM.nextBytes(salt);
        return written(pin, salt, new Cost(KIBIBYTES, PASSES, LANES), HASH_BYTES);
    }

    /** What it costs to reckon one. */
    record Cost(int kibibytes, int passes, int lanes) {}

    /** Whether this is the PIN of a hash; for a hash that can't be read nothing is. */
    static boolean matches(String pin, String hash) {
        Matcher parts = WRITTEN.matcher(hash);
        if (!parts.matches()) {
            return false;
        }
        Cost cost = new Cost(
                Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3)));
        byte[] salt = Base64.getDecoder().decode(parts.group(4));
        int length = Base64.getDecoder().decode(parts.group(5)).length;
        return MessageDigest.isEqual(bytes(written(pin, salt, cost, length)), bytes(hash));
    }

    static String written(String pin, byte[] salt, Cost cost, int length) {
        Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + cost.kibibytes + ",t=" + cost.passes + ",p=" + cost.lanes + "$"
                + base64.encodeToString(salt) + "$" + base64.encodeToString(reckoned(pin, salt, cost, length));
    }

    private static byte[] reckoned(String pin, byte[] salt, Cost cost, int length) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(cost.kibibytes)
                .withIterations(cost.passes)
                .withParallelism(cost.lanes)
                .withSalt(salt)
                .build());
        byte[] hash = new byte[length];
        ONE_AT_A_TIME.acquireUninterruptibly();
        try {
            generator.generateBytes(bytes(pin), hash);
            return hash;
        } finally {
            ONE_AT_A_TIME.release();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
