package rinsebell.app.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MachineTimeTest {

    /** Source of the form: proc(5), two numbers of seconds: since the start, and idle. */
    @Test
    void readsTheUptime() {
        assertThat(MachineTime.uptimeMillis("350735.47 234388.90")).hasValue(350_735_470);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "350735.47"})
    void anythingElseIsNoUptime(String text) {
        assertThat(MachineTime.uptimeMillis(text)).isEmpty();
    }

    @Test
    void thisMachineTicks() {
        MachineTime time = new MachineTime();
        long before = time.monotonicNanos();
        assertThat(time.monotonicNanos()).isGreaterThanOrEqualTo(before);
        assertThat(time.bootId()).isEqualTo(new MachineTime().bootId());
    }
}
