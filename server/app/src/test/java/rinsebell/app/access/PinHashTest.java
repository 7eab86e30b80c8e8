package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;

/** Hashes of PINs. */
class PinHashTest {
    private static final PinHash.Cost COST = new PinHash.Cost(PinHash.KIBIBYTES, PinHash.PASSES, PinHash.LANES);

    /** RFC 9106, section 5.3: the library's Argon2id is the standard's. */
    @Test
    void theLibraryGivesTheTagOfTheStandard() {
        var generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(32)
                .withIterations(3)
                .withParallelism(4)
                .withSalt(filled(16, 2))
                .withSecret(filled(8, 3))
                .withAdditional(filled(12, 4))
                .build());
        var tag = new byte[32];
        generator.generateBytes(filled(32, 1), tag);
        assertThat(HexFormat.of().formatHex(tag))
                .isEqualTo("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    }

    private static byte[] filled(int length, int with) {
        var bytes = new byte[length];
        Arrays.fill(bytes, (byte) with);
        return bytes;
    }

    /** Debian's argon2 20190702: {@code printf 402917 | argon2 sixteen-salt-bys -id -t 2 -k 19456 -p 1 -l 32 -e}. */
    @Test
    void writtenAsTheReferenceProgramWritesIt() {
        var salt = "sixteen-salt-bys".getBytes(StandardCharsets.US_ASCII);
        assertThat(PinHash.written("402917", salt, COST, 32))
                .isEqualTo(
                        "$argon2id$v=19$m=19456,t=2,p=1$c2l4dGVlbi1zYWx0LWJ5cw$QNQSJmidbSyKpmdt78DsdRPoUj4sKyV+i6kZg6CRi1k");
    }

    @Test
    void onlyItsOwnPinMatchesAndNoTwoHashesAreAlike() {
        var hash = PinHash.of("402917");
        assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").isNotEqualTo(PinHash.of("402917"));
        assertThat(PinHash.matches("402917", hash)).isTrue();
        assertThat(PinHash.matches("402918", hash)).isFalse();
        assertThat(PinHash.matches("", hash)).isFalse();
    }

    @Test
    void whatIsNoHashMatchesNothing() {
        assertThat(PinHash.matches("402917", "")).isFalse();
        assertThat(PinHash.matches("402917", "402917")).isFalse();
        assertThat(PinHash.matches("", "$argon2id$v=19$m=19456,t=2,p=1$$")).isFalse();
    }
}
