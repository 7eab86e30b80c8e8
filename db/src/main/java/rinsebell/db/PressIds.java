package rinsebell.db;

import java.util.Arrays;
import java.util.stream.LongStream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * The ids of all presses in the table, each as a number: whoever asks about an id that is none of them need not ask the
 * table. Eight bytes each, so that even those of years fit into memory.
 */
final class PressIds {

    static final PressIds UNKNOWN = new PressIds(null);

    private final long @Nullable [] sorted;

    private PressIds(long @Nullable [] sorted) {
        this.sorted = sorted;
    }

    static PressIds read(Handle handle) {
        try (var ids = handle.createQuery("""
                        select id
                        from press
                        """).mapTo(String.class).stream()) {
            return of(ids.mapToLong(PressIds::number));
        }
    }

    private static PressIds of(LongStream numbers) {
        long[] sorted = numbers.toArray();
        Arrays.sort(sorted);
        return new PressIds(sorted);
    }

    /** Whether there is surely no such press; two ids may share a number, and then it is not sure. */
    boolean lack(String id) {
        return sorted != null && Arrays.binarySearch(sorted, number(id)) < 0;
    }

    /** A polynomial of its characters, as {@link String#hashCode} is, in 64 bits. */
    private static long number(String id) {
        long number = 7;
        for (int at = 0; at < id.length(); at++) {
            number = number * 1_000_003 + id.charAt(at);
        }
        return number;
    }
}
