package rinsebell.app.trust;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;

/**
 * By what people tell one certificate from another.
 *
 * @param hex SHA-256 over its DER form, 64 digits
 */
public record Fingerprint(String hex) {

    private static final int DIGITS_OF_A_GROUP = 4;
    private static final int DIGITS = 64;

    static Fingerprint of(byte[] der) {
        try {
            return new Fingerprint(HexFormat.of()
                    .withUpperCase()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(der)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    /** Sixteen of four digits each, so that two people can read it to each other. */
    public List<String> groups() {
        return java.util.stream.IntStream.range(0, DIGITS / DIGITS_OF_A_GROUP)
                .mapToObj(i -> hex.substring(DIGITS_OF_A_GROUP * i, DIGITS_OF_A_GROUP * (i + 1)))
                .toList();
    }

    /** Always the same of the same, for one use of it. */
    UUID id(String use) {
        return UUID.nameUUIDFromBytes((use + " " + hex).getBytes(StandardCharsets.UTF_8));
    }
}
