package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;

/**
 * More bells than anybody can take in. It begins with the bell that is more than ten in ten minutes, and ends when fewer
 * than five began in the last ten minutes (ISA-18.2-2016: more than 10 in 10 min, until below about 5).
 *
 * @param began when
 * @param ended when, if no more bells begin
 */
public record Flood(Instant began, Instant ended) {
    static final Duration WINDOW = Duration.ofMinutes(10);
    /** More than so many in ten minutes are a flood. */
    static final int MOST = 10;

    private static final int OVER_BELOW = 5;

    /** @param begins when bells began */
    static List<Flood> of(Collection<Instant> begins) {
        // Ten minutes are half-open: a bell no longer counts when they have passed since it began.
        var changes = new TreeMap<Instant, Integer>();
        begins.forEach(at -> {
            changes.merge(at, 1, Integer::sum);
            changes.merge(at.plus(WINDOW), -1, Integer::sum);
        });
        var floods = new ArrayList<Flood>();
        Instant since = null;
        var count = 0;
        for (var change : changes.entrySet()) {
            count += change.getValue();
            if (since == null && count > MOST) {
                since = change.getKey();
            } else if (since != null && count < OVER_BELOW) {
                floods.add(new Flood(since, change.getKey()));
                since = null;
            }
        }
        return floods;
    }

    /** How much of it lies before an instant. */
    Duration before(Instant end) {
        var until = ended.isAfter(end) ? end : ended;
        return until.isBefore(began) ? Duration.ZERO : Duration.between(began, until);
    }
}
