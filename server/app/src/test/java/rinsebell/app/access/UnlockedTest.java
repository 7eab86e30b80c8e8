package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import rinsebell.app.door.Key;
import rinsebell.floor.salon.StaffId;

/** How long a PIN opens (idle and longest times: OWASP ASVS 5.0, 7.3.1 and 7.3.2). */
class UnlockedTest {
    private static final StaffId MARA = new StaffId(4);
    private static final StaffId JO = new StaffId(5);

    private long nanos;
    private final Unlocked unlocked = new Unlocked(() -> nanos);

    private void pass(Duration time) {
        nanos += time.toNanos();
    }

    @Test
    void twoMinutesWithoutUseLockIt() {
        Key key = unlocked.unlock(7, MARA);
        pass(Unlocked.IDLE.minusNanos(1));
        assertThat(unlocked.use(key, 7)).contains(MARA);
        pass(Unlocked.IDLE.minusNanos(1));
        assertThat(unlocked.use(key, 7)).contains(MARA);
        pass(Unlocked.IDLE);
        assertThat(unlocked.use(key, 7)).isEmpty();
    }

    @Test
    void lookingIsNoUse() {
        Key key = unlocked.unlock(7, MARA);
        pass(Unlocked.IDLE.minusNanos(1));
        assertThat(unlocked.person(key, 7)).contains(MARA);
        pass(Duration.ofNanos(1));
        assertThat(unlocked.person(key, 7)).isEmpty();
    }

    @Test
    void noUseMakesItLongerThanADay() {
        Key key = unlocked.unlock(7, MARA);
        Duration passed = Duration.ZERO;
        Duration step = Duration.ofMinutes(1);
        while (passed.plus(step).compareTo(Unlocked.LONGEST) < 0) {
            pass(step);
            passed = passed.plus(step);
            assertThat(unlocked.use(key, 7)).contains(MARA);
        }
        pass(step);
        assertThat(unlocked.use(key, 7)).isEmpty();
    }

    @Test
    void aKeyIsGoodOnItsDeviceAloneAndUntilItIsLocked() {
        Key key = unlocked.unlock(7, MARA);
        Key other = unlocked.unlock(8, JO);
        assertThat(unlocked.use(key, 8)).isEmpty();
        assertThat(unlocked.use(Key.fresh(), 7)).isEmpty();
        unlocked.lock(key);
        assertThat(unlocked.use(key, 7)).isEmpty();
        assertThat(unlocked.use(other, 8)).contains(JO);
        unlocked.lockAll(JO::equals);
        assertThat(unlocked.use(other, 8)).isEmpty();
    }

    @Test
    void aDeviceThatIsThrownOutIsLocked() {
        Key key = unlocked.unlock(7, MARA);
        Key other = unlocked.unlock(8, MARA);
        unlocked.lockDevice(7);
        assertThat(unlocked.use(key, 7)).isEmpty();
        assertThat(unlocked.use(other, 8)).contains(MARA);
    }
}
