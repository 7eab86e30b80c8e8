package rinsebell.planner;

import java.util.stream.IntStream;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;

/** Something that a schedule gives a start to. Time is in whole units, whatever they are. */
final class Activity {
    final int index;
    final IntVar start;
    final int duration;

    /** On which machine; null where it asks for none. */
    @Nullable
    IntVar machine;

    /** The machine that is tried first. */
    int preferred;

    /** The start that it had best have; it is sought from there on, in both directions. */
    int wanted = Integer.MIN_VALUE;

    /** Of those that can begin at the same time, the smallest is tried first. */
    int rank;

    private final int release;

    Activity(int index, IntVar start, int duration) {
        this.index = index;
        this.start = start;
        this.duration = duration;
        this.release = start.getLB();
    }

    /** Times that it gives, as instants and as lengths. */
    IntStream marks() {
        return IntStream.of(release, duration, wanted == Integer.MIN_VALUE ? 0 : wanted);
    }

    Activity wanted(int at) {
        wanted = at;
        return this;
    }

    Activity rank(int smallestFirst) {
        rank = smallestFirst;
        return this;
    }
}
