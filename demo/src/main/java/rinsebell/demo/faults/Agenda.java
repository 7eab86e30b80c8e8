package rinsebell.demo.faults;

import java.util.Comparator;
import java.util.PriorityQueue;

/** What will happen and when, in true time: milliseconds since 1970, whatever any clock shows. */
final class Agenda {
    private static final Comparator<Entry> IN_TIME =
            Comparator.comparingLong(Entry::at).thenComparingLong(Entry::order);

    private final PriorityQueue<Entry> entries = new PriorityQueue<>(IN_TIME);
    private long now;
    private long added;

    private record Entry(long at, long order, Runnable what) {}

    Agenda(long begin) {
        this.now = begin;
    }

    long now() {
        return now;
    }

    void in(long millis, Runnable what) {
        at(now + millis, what);
    }

    /** Of two at the same instant the one that was entered first comes first; what lies behind comes at once. */
    void at(long when, Runnable what) {
        entries.add(new Entry(Math.max(now, when), added++, what));
    }

    /** Lets everything happen up to then. */
    void runUntil(long end) {
        while (!entries.isEmpty() && entries.peek().at <= end) {
            var next = entries.remove();
            now = next.at;
            next.what.run();
        }
        now = end;
    }
}
