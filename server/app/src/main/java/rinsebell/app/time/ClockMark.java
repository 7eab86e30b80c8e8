package rinsebell.app.time;

import java.time.Duration;
import java.time.Instant;
import java.util.SortedMap;

/**
 * Where the salon's clock stood at some moment, kept on disk to bridge a restart of the server.
 *
 * @param bootId the machine's start in which the mark was made; blank where not known
 * @param uptimeMillis milliseconds since that start, sleep included; zero where not known
 * @param salon the salon's time at that moment
 * @param behind whether the machine had started, by its own clock, before what was already recorded, and nobody had
 *     said yet what the time is
 * @param confirmed the number of the newest fact by which the clock had been put right; 0 for none
 */
public record ClockMark(String bootId, long uptimeMillis, Instant salon, boolean behind, long confirmed) {

    /**
     * This mark, brought up to the facts. A fact by which the clock was put right is on disk before the mark that
     * follows it, and a server can die in between.
     *
     * @param steps by how much each such fact put the clock right, by the number of the fact
     */
    ClockMark broughtUpTo(SortedMap<Long, Duration> steps) {
        SortedMap<Long, Duration> later = steps.tailMap(confirmed + 1);
        return later.isEmpty()
                ? this
                : new ClockMark(
                        bootId,
                        uptimeMillis,
                        later.values().stream().reduce(salon, Instant::plus, (one, other) -> other),
                        false,
                        later.lastKey());
    }
}
