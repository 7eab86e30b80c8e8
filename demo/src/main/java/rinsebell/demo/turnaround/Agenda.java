package rinsebell.demo.turnaround;

import java.time.Instant;
import java.util.Comparator;
import java.util.PriorityQueue;

/** What is still to happen: in the order of time, and of two at once the one that was entered first. */
final class Agenda {
    private record Entry(Instant at, long number, Runnable step) {}

    private final PriorityQueue<Entry> entries =
            new PriorityQueue<>(Comparator.comparing(Entry::at).thenComparing(Entry::number));
    private long count;
    private Instant now;

    Agenda(Instant from) {
        now = from;
    }

    Instant now() {
        return now;
    }

    void at(Instant when, Runnable step) {
        entries.add(new Entry(when, count++, step));
    }

    /** Until nothing is left. */
    void live() {
        for (var next = entries.poll(); next != null; next = entries.poll()) {
            now = next.at;
            next.step.run();
        }
    }
}
