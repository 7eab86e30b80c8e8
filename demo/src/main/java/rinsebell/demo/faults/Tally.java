package rinsebell.demo.faults;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What was counted, in a day or in many. A bell is a turn of a bell that sounded on at least one device. */
final class Tally {
    private static final int STEP = 50;

    private final Set<Turn.Key> sounded = new HashSet<>();
    private final Map<String, Long> faults = new TreeMap<>();
    private final Map<Long, Long> lateness = new TreeMap<>();
    private long days;
    private long bells;
    private long soundings;
    private long presses;

    void sounded(Turn.Key key, long late) {
        if (sounded.add(key)) {
            bells++;
        }
        soundings++;
        lateness.merge(Math.max(0, late) / STEP * STEP, 1L, Long::sum);
    }

    void fault(String kind) {
        faults.merge(kind, 1L, Long::sum);
    }

    void press() {
        presses++;
    }

    /** Adds a day that is over. */
    synchronized void add(Tally day) {
        days++;
        bells += day.bells;
        soundings += day.soundings;
        presses += day.presses;
        day.faults.forEach((kind, times) -> faults.merge(kind, times, Long::sum));
        day.lateness.forEach((late, times) -> lateness.merge(late, times, Long::sum));
    }

    synchronized long bells() {
        return bells;
    }

    synchronized long faults() {
        return faults.values().stream().mapToLong(Long::longValue).sum();
    }

    synchronized Map<String, Long> faultsByKind() {
        return new TreeMap<>(faults);
    }

    /** Within how many milliseconds so many of a hundred soundings came. */
    synchronized long latenessOf(double percent) {
        var left = soundings * percent / 100;
        for (var one : lateness.entrySet()) {
            left -= one.getValue();
            if (left <= 0) {
                return one.getKey() + STEP;
            }
        }
        return 0;
    }

    @Override
    public synchronized String toString() {
        return days + " days, " + presses + " presses, " + bells + " bells sounded " + soundings + " times, " + faults()
                + " faults; late by less than " + latenessOf(50) + " ms (half), " + latenessOf(99) + " ms (99 %), "
                + latenessOf(100) + " ms (all)";
    }
}
