package rinsebell.app.access;

import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import rinsebell.floor.salon.StaffId;

/**
 * Slows down whoever guesses. Five wrong PINs are free; from then on each must wait, twice as long as the one before, an
 * hour at most. Wrong ones are counted for a person and for a device. Where a person's PIN was right once, that person is
 * counted apart from everybody else there, so nobody elsewhere, and nobody who guesses for others on it, can lock them out.
 *
 * <p>A try counts as wrong from its beginning: a thousand at once are a thousand.
 */
final class Guesses {
    static final int FREE = 5;
    static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    static final Duration LONGEST_WAIT = Duration.ofHours(1);

    /** Devices and people that are counted at once; the one that was wrong longest ago is forgotten. */
    private static final int MOST = 2_000;

    private final LongSupplier nanos;
    private final Map<String, Count> counts = new LinkedHashMap<>();

    private record Count(int wrong, long lastNanos) {
        static final Count NONE = new Count(0, 0);

        long untilNanos() {
            int beyond = wrong - FREE;
            if (beyond < 0) {
                return Long.MIN_VALUE;
            }
            Duration wait = beyond > 10 ? LONGEST_WAIT : FIRST_WAIT.multipliedBy(1L << beyond);
            return lastNanos + (wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait).toNanos();
        }
    }

    /** @param nanos a clock that nobody can set */
    Guesses(LongSupplier nanos) {
        this.nanos = nanos;
    }

    /**
     * Begins a try.
     *
     * @param known whether that person's PIN was right on that device once
     * @return how long to wait before it may be tried; zero when it may be tried now, and then it counts as wrong
     */
    synchronized Duration begin(StaffId person, long device, boolean known) {
        long now = nanos.getAsLong();
        Duration wait = Duration.ZERO;
        for (String counted : counted(person, device, known)) {
            Count count = counts.getOrDefault(counted, Count.NONE);
            long left = count.wrong < FREE ? 0 : count.untilNanos() - now;
            if (left > wait.toNanos()) {
                wait = Duration.ofNanos(left);
            }
        }
        if (wait.isZero()) {
            counted(person, device, known).forEach(counted -> add(counted, now));
        }
        return wait;
    }

    private void add(String counted, long now) {
        Count before = counts.getOrDefault(counted, Count.NONE);
        counts.remove(counted);
        counts.put(counted, new Count(before.wrong + 1, now));
        if (counts.size() > MOST) {
            counts.remove(counts.keySet().iterator().next());
        }
    }

    /** It was right: what was counted for them there is forgotten. What strangers did elsewhere is not. */
    synchronized void right(StaffId person, long device, boolean known) {
        counted(person, device, known).forEach(counts::remove);
    }

    private static List<String> counted(StaffId person, long device, boolean known) {
        return known
                ? List.of("person " + person.value() + " on " + device)
                : List.of("person " + person.value(), "device " + device);
    }

    Map<String, Integer> wrong() {
        Map<String, Integer> wrong = new HashMap<>();
        counts.forEach((counted, count) -> wrong.put(counted, count.wrong));
        return wrong;
    }
}
