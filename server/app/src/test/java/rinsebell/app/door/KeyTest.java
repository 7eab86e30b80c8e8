package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.BitSet;
import java.util.HashSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What opens something is long enough, and another each time (OWASP ASVS 5.0, 7.2.3: at least 128 bits). */
class KeyTest {
    private static final int BITS = 144;

    @Test
    void eachBitOfAKeyIsSometimesSetAndNoTwoAreAlike() {
        var seen = new HashSet<String>();
        var set = new BitSet();
        var clear = new BitSet();
        Stream.generate(Key::fresh).limit(2_000).forEach(key -> {
            assertThat(seen.add(key.text())).isTrue();
            var bits = BitSet.valueOf(Base64.getUrlDecoder().decode(key.text()));
            set.or(bits);
            bits.flip(0, BITS);
            clear.or(bits);
        });
        assertThat(set.cardinality()).isEqualTo(BITS);
        assertThat(clear.cardinality()).isEqualTo(BITS);
    }

    /** FIPS 180-4's SHA-256 of 24 letters A, by {@code printf AAAAAAAAAAAAAAAAAAAAAAAA | sha256sum}. */
    @Test
    void onlyItsHashIsKeptAndNoMessageShowsIt() {
        var key = Key.read("A".repeat(24)).orElseThrow();
        assertThat(key.hash()).isEqualTo("1bda9f0aed80857d43c9329457f28b1ca29f736a0c539901e1ba16a909eb07b4");
        assertThat(key).hasToString("a key");
    }
}
