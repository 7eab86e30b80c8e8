package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import rinsebell.floor.salon.StaffId;

/**
 * How wrong PINs are slowed down. Limiting online guessing is asked for by NIST SP 800-63B-4, section 3.2.2, and OWASP ASVS
 * 5.0, 6.3.1; the numbers are the house's own.
 */
class GuessesTest {
    private static final StaffId MARA = new StaffId(4);
    private static final StaffId JO = new StaffId(5);
    private static final long STRANGE = 7;
    private static final long HERS = 8;

    private long nanos;
    private final Guesses guesses = new Guesses(() -> nanos);

    private Duration guess(StaffId person, long device, boolean known) {
        return guesses.begin(person, device, known);
    }

    private void guesses(int many, StaffId person, long device, boolean known) {
        for (int i = 0; i < many; i++) {
            assertThat(guess(person, device, known)).isZero();
        }
    }

    private void pass(Duration time) {
        nanos += time.toNanos();
    }

    @Test
    void fiveAreFreeAndEachFurtherOneWaitsTwiceAsLong() {
        guesses(5, MARA, STRANGE, false);
        for (long seconds = 30; seconds <= 1_920; seconds *= 2) {
            assertThat(guess(MARA, STRANGE, false)).isEqualTo(Duration.ofSeconds(seconds));
            pass(Duration.ofSeconds(seconds).minusNanos(1));
            assertThat(guess(MARA, STRANGE, false)).isEqualTo(Duration.ofNanos(1));
            pass(Duration.ofNanos(1));
            assertThat(guess(MARA, STRANGE, false)).isZero();
        }
        assertThat(guess(MARA, STRANGE, false)).as("an hour at most").isEqualTo(Duration.ofHours(1));
    }

    @Test
    void aDayGivesAStrangerFewTries() {
        int tries = 0;
        for (int second = 0; second < 86_400; second++) {
            if (guess(MARA, STRANGE, false).isZero()) {
                tries++;
            }
            pass(Duration.ofSeconds(1));
        }
        assertThat(tries).as("of a million PINs").isLessThan(40);
    }

    /** Many devices together get no more tries at one person than one does. */
    @Test
    void aPersonIsCountedOverAllDevices() {
        for (long device = 1; device <= 5; device++) {
            guesses(1, MARA, device, false);
        }
        assertThat(guess(MARA, 99, false)).isPositive();
        assertThat(guess(JO, 99, false)).isZero();
    }

    /** One device gets no more tries at many people than at one. */
    @Test
    void aDeviceIsCountedOverAllPeople() {
        for (long person = 1; person <= 5; person++) {
            guesses(1, new StaffId(person), STRANGE, false);
        }
        assertThat(guess(new StaffId(99), STRANGE, false)).isPositive();
    }

    @Test
    void nobodyIsLockedOutWhereTheirPinWasRightOnce() {
        guesses(5, MARA, STRANGE, false);
        guesses(5, JO, HERS, false);
        assertThat(guess(MARA, HERS, false)).isPositive();
        assertThat(guess(MARA, HERS, true)).as("known there").isZero();
    }

    @Test
    void whoeverGuessesOnHerOwnTabletIsSlowedThere() {
        guesses(5, MARA, HERS, true);
        assertThat(guess(MARA, HERS, true)).isEqualTo(Guesses.FIRST_WAIT);
    }

    /** Being right somewhere gives a stranger elsewhere no further tries. */
    @Test
    void rightOnATabletThatKnowsHerForgivesNoStranger() {
        guesses(5, MARA, STRANGE, false);
        guesses(1, MARA, HERS, true);
        guesses.right(MARA, HERS, true);
        assertThat(guess(MARA, STRANGE, false)).isPositive();
        guesses(5, MARA, HERS, true);
    }

    @Test
    void whatWaitsIsNotCounted() {
        guesses(5, MARA, STRANGE, false);
        for (int i = 0; i < 1_000; i++) {
            assertThat(guess(MARA, STRANGE, false)).isEqualTo(Guesses.FIRST_WAIT);
        }
    }
}
