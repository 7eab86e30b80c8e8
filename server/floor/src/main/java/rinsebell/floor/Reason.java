package rinsebell.floor;

import java.util.Arrays;
import java.util.List;

/**
 * One reason with what it speaks of.
 *
 * @param code which
 * @param args what its words name, in their order: texts of directions, enums of the floor, Grams, Percent, Duration,
 *     Instant, Place, BowlId, whole numbers
 */
public record Reason(ReasonCode code, List<Object> args) implements Comparable<Reason> {
    public Reason {
        args = List.copyOf(args);
    }

    public static Reason of(ReasonCode code, Object... args) {
        return new Reason(code, Arrays.asList(args));
    }

    /** This one reason where something does not hold; none where it does. */
    public static List<Reason> unless(boolean holds, ReasonCode code, Object... args) {
        return holds ? List.of() : List.of(of(code, args));
    }

    /** In the order of harm. */
    @Override
    public int compareTo(Reason other) {
        return code.compareTo(other.code);
    }
}
