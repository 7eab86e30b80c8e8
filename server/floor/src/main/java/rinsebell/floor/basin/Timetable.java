package rinsebell.floor.basin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rinsebell.floor.visit.VisitId;

/**
 * What is taken while a plan is being made: each basin, each head, and the hands. In milliseconds, because it is asked
 * thousands of times for one plan.
 */
final class Timetable {
    /** Earlier and later than anything that is planned, and far enough from the ends that sums do not overflow. */
    static final long EVER = Long.MAX_VALUE / 4;

    private final Map<Integer, Spans> basins = new HashMap<>();
    private final Map<VisitId, Spans> heads = new HashMap<>();
    private final HandsTaken hands;

    Timetable(Station station) {
        for (var basin : station.basins()) {
            var spans = new Spans();
            spans.add(-EVER, millis(basin.freeFrom()));
            basins.put(basin.number(), spans);
        }
        hands = new HandsTaken(station.hands());
    }

    /** A job with its figures read once. */
    static final class Asked {
        final Job job;
        final long stay;
        final long earliest;
        final long wanted;
        final long latest;
        private final long[] from;
        private final long[] until;

        Asked(Job job) {
            this.job = job;
            this.stay = job.work().stay().toMillis();
            this.earliest = millis(job.earliest());
            this.wanted = millis(job.wanted());
            this.latest = millis(job.latest());
            var holds = job.work().hands();
            this.from = holds.stream().mapToLong(hold -> hold.from().toMillis()).toArray();
            this.until =
                    holds.stream().mapToLong(hold -> hold.until().toMillis()).toArray();
        }
    }

    static long millis(Instant instant) {
        if (instant.equals(Instant.MIN)) {
            return -EVER;
        }
        return instant.equals(Instant.MAX) ? EVER : instant.toEpochMilli();
    }

    /** The earliest instant from one on at which water can be on at a basin; empty when there is none. */
    OptionalLong earliest(Asked asked, int basin, long from) {
        return earliest(asked, basin, from, EVER);
    }

    /** The same, and empty when there is none before another instant. */
    OptionalLong earliest(Asked asked, int basin, long from, long before) {
        var taken = spans(basin);
        var head = heads.get(asked.job.visit());
        var at = from;
        while (at < before) {
            var next = taken.after(at, at + asked.stay);
            next = head == null ? next : Math.max(next, head.after(at, at + asked.stay));
            for (var i = 0; i < asked.from.length && next == at; i++) {
                next = hands.after(at + asked.from[i], at + asked.until[i]) - asked.from[i];
            }
            if (next <= at) {
                return OptionalLong.of(at);
            }
            at = next;
        }
        return OptionalLong.empty();
    }

    /** The latest such instant in a span that begins with one; empty when there is none. */
    OptionalLong latest(Asked asked, int basin, long from, long until) {
        var taken = spans(basin);
        var head = heads.get(asked.job.visit());
        var at = until;
        while (at >= from) {
            var next = taken.before(at, at + asked.stay) - asked.stay;
            next = head == null ? next : Math.min(next, head.before(at, at + asked.stay) - asked.stay);
            for (var i = asked.from.length - 1; i >= 0 && next == at; i--) {
                next = hands.before(at + asked.from[i], at + asked.until[i]) - asked.until[i];
            }
            if (next >= at) {
                return OptionalLong.of(at);
            }
            at = next;
        }
        return OptionalLong.empty();
    }

    void take(Asked asked, int basin, long at) {
        spans(basin).add(at, at + asked.stay);
        heads.computeIfAbsent(asked.job.visit(), visit -> new Spans()).add(at, at + asked.stay);
        for (var i = 0; i < asked.from.length; i++) {
            hands.take(at + asked.from[i], at + asked.until[i], 1);
        }
    }

    void giveBack(Asked asked, int basin, long at) {
        spans(basin).remove(at, at + asked.stay);
        var head = heads.get(asked.job.visit());
        if (head != null) {
            head.remove(at, at + asked.stay);
        }
        for (var i = 0; i < asked.from.length; i++) {
            hands.take(at + asked.from[i], at + asked.until[i], -1);
        }
    }

    private Spans spans(int basin) {
        return basins.computeIfAbsent(basin, number -> new Spans());
    }

    /** Stretches of time that do not overlap, in the order of time. */
    private static final class Spans {
        private final List<long[]> all = new ArrayList<>();

        void add(long from, long until) {
            var i = all.size();
            while (i > 0 && all.get(i - 1)[0] > from) {
                i--;
            }
            all.add(i, new long[] {from, until});
        }

        void remove(long from, long until) {
            all.removeIf(span -> span[0] == from && span[1] == until);
        }

        /** {@code from} if the stretch is free, or else when what stands in its way has ended. */
        long after(long from, long until) {
            for (var span : all) {
                if (span[0] < until && from < span[1]) {
                    return span[1];
                }
            }
            return from;
        }

        /** {@code until} if the stretch is free, or else when what stands in its way begins. */
        long before(long from, long until) {
            for (var i = all.size() - 1; i >= 0; i--) {
                var span = all.get(i);
                if (span[0] < until && from < span[1]) {
                    return span[0];
                }
            }
            return until;
        }
    }

    /** The pairs of hands that are left, from edge to edge; before the first edge as many as before. */
    private static final class HandsTaken {
        private final boolean counted;
        private long[] edges = new long[64];
        private int[] left = new int[64];
        private int size;

        HandsTaken(Hands hands) {
            counted = hands.known();
            insert(0, -EVER, 0);
            for (var step : hands.steps()) {
                left[edge(millis(step.from()))] = step.count();
                for (var i = edge(millis(step.from())); i < size; i++) {
                    left[i] = step.count();
                }
            }
        }

        long after(long from, long until) {
            if (!counted) {
                return from;
            }
            for (var i = segment(from); i < size && edges[i] < until; i++) {
                if (left[i] <= 0) {
                    var free = i + 1;
                    while (free < size && left[free] <= 0) {
                        free++;
                    }
                    return free < size ? edges[free] : 2 * EVER;
                }
            }
            return from;
        }

        long before(long from, long until) {
            if (!counted) {
                return until;
            }
            for (var i = segment(until - 1); i >= 0 && (i + 1 >= size || edges[i + 1] > from); i--) {
                if (left[i] <= 0) {
                    return edges[i];
                }
            }
            return until;
        }

        void take(long from, long until, int pairs) {
            if (!counted) {
                return;
            }
            var first = edge(from);
            var end = edge(until);
            for (var i = first; i < end; i++) {
                left[i] -= pairs;
            }
        }

        /** The last edge that is not after an instant. */
        private int segment(long at) {
            var low = 0;
            var high = size - 1;
            while (low < high) {
                var middle = (low + high + 1) >>> 1;
                if (edges[middle] <= at) {
                    low = middle;
                } else {
                    high = middle - 1;
                }
            }
            return low;
        }

        /** The place of an edge at an instant, made where there is none. */
        private int edge(long at) {
            var i = segment(at);
            if (edges[i] == at) {
                return i;
            }
            insert(i + 1, at, left[i]);
            return i + 1;
        }

        private void insert(int place, long at, int count) {
            if (size == edges.length) {
                edges = Arrays.copyOf(edges, 2 * size);
                left = Arrays.copyOf(left, 2 * size);
            }
            for (var i = size; i > place; i--) {
                edges[i] = edges[i - 1];
                left[i] = left[i - 1];
            }
            edges[place] = at;
            left[place] = count;
            size++;
        }
    }
}
