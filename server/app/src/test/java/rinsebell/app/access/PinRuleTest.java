package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which PINs may be chosen: "repetitive or sequential" ones may not (NIST SP 800-63B-4, section 3.1.1.2). */
class PinRuleTest {
    @ParameterizedTest
    @CsvSource({
        "12345, TOO_SHORT",
        "4029173658204, TOO_LONG",
        "40291a, NOT_FIGURES",
        "٤٠٢٩١٧, NOT_FIGURES",
        "'402 917', NOT_FIGURES",
        "123456, RUN",
        "654321, RUN",
        "901234, RUN",
        "987650, RUN",
        "000000, REPEATS",
        "407770, REPEATS",
        "121212, REPEATS",
        "402402, REPEATS",
        "40294029, REPEATS",
    })
    void tooEasy(String pin, PinRule.Flaw flaw) {
        assertThat(PinRule.flaw(pin)).contains(flaw);
    }

    /** Just short of a run or a repeat; the longest and the shortest. */
    @ParameterizedTest
    @ValueSource(strings = {"402917", "123056", "321890", "400294", "402917365820", "112233"})
    void goodEnough(String pin) {
        assertThat(PinRule.flaw(pin)).isEmpty();
    }

    @Test
    void mostOfAMillionAreLeft() {
        var random = new Random(6);
        var left = random.ints(10_000, 0, 1_000_000)
                .filter(pin -> PinRule.flaw("%06d".formatted(pin)).isEmpty())
                .count();
        assertThat(left).isGreaterThan(9_000);
    }

    @Test
    void nothingIsTooShort() {
        assertThat(PinRule.flaw("")).contains(PinRule.Flaw.TOO_SHORT);
    }
}
