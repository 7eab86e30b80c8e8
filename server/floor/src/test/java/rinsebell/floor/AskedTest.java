package rinsebell.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class AskedTest {
    private static final Instant TEN = Instant.parse("2026-03-07T10:00:00.123Z");

    /** What is kept is read again as it was answered: the journal writes milliseconds. */
    @Test
    void isToTheMillisecond() {
        var asked = Asked.at(TEN.plusNanos(999_999));
        assertThat(asked.now()).isEqualTo(TEN);
        assertThat(asked.happened()).isEqualTo(TEN);
        assertThat(asked.happened(TEN.minusNanos(1), Asked.Told.BY_HAND).happened())
                .isEqualTo(TEN.minusMillis(1));
    }
}
