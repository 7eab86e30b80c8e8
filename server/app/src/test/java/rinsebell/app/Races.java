package rinsebell.app;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.jetbrains.lincheck.LincheckAssertionError;
import org.jetbrains.lincheck.datastructures.ModelCheckingOptions;
import org.jetbrains.lincheck.datastructures.StressOptions;

/**
 * Whether threads that use a class at once always see what they would see one after the other, in some order.
 *
 * <p>Source: Lincheck tries the interleavings of random short programs, and searches for an order in which the same
 * class, used by one thread, answers the same (linearizability; Herlihy and Wing, 1990).
 */
public final class Races {
    /** Short programs for each class; {@code -Drinsebell.races=} tries more. */
    private static final int PROGRAMS = Integer.getInteger("rinsebell.races", 3);

    private static final int PROGRAMS_TO_FIND_ONE = 6;

    private Races() {}

    /** @param uses a class whose operations are what threads do to a thing of its own */
    public static void noneIn(Class<?> uses) {
        options(PROGRAMS).check(uses);
    }

    /**
     * The same with real threads and as many tries as there is time for, where what is shared are queues and sets of the
     * JDK, whose insides the other does not interleave, or more than it can look through.
     */
    public static void noneUnderStress(Class<?> uses) {
        new StressOptions()
                .iterations(PROGRAMS)
                .invocationsPerIteration(1_000)
                .threads(2)
                .actorsPerThread(3)
                .actorsBefore(0)
                .actorsAfter(1)
                .check(uses);
    }

    /** A race is found where one is: whoever asks for none can fail. */
    public static void foundIn(Class<?> uses) {
        assertThatThrownBy(() -> options(PROGRAMS_TO_FIND_ONE).check(uses)).isInstanceOf(LincheckAssertionError.class);
    }

    private static ModelCheckingOptions options(int programs) {
        return new ModelCheckingOptions()
                .iterations(programs)
                .invocationsPerIteration(100)
                .threads(2)
                .actorsPerThread(2)
                .actorsBefore(1)
                .actorsAfter(1);
    }
}
