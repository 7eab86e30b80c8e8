package rinsebell.planner;

import java.time.Duration;
import java.time.Instant;
import rinsebell.floor.basin.Station;

/**
 * Instants as whole seconds from an origin. What holds in whole seconds holds to the millisecond: whoever may begin begins
 * at a second or later, whoever is taken is so for the seconds begun.
 *
 * @param origin a whole second
 */
record Seconds(long origin) {
    /** Further away than anything that is planned; small enough for the solver's sums; whole hours. */
    static final int FAR = 300 * 3_600;

    /** From when the first job may be rinsed. */
    static Seconds of(Station station) {
        return new Seconds(station.jobs().stream()
                .map(job -> job.earliest().isBefore(station.from()) ? station.from() : job.earliest())
                .mapToLong(Instant::getEpochSecond)
                .min()
                .orElse(0));
    }

    int down(Instant instant) {
        return near(instant.getEpochSecond() - origin);
    }

    int up(Instant instant) {
        return near(instant.getEpochSecond() - origin + (instant.getNano() > 0 ? 1 : 0));
    }

    private static int near(long second) {
        return (int) Math.max(-FAR, Math.min(FAR, second));
    }

    static int down(Duration duration) {
        return (int) Math.floorDiv(duration.toMillis(), 1_000L);
    }

    static int up(Duration duration) {
        return (int) -Math.floorDiv(-duration.toMillis(), 1_000L);
    }

    Instant instant(int second) {
        return Instant.ofEpochSecond(origin + second);
    }

    /** Whether an instant is near enough to be told from others. */
    boolean isNear(Instant instant) {
        return Math.abs(instant.getEpochSecond() - origin) < FAR;
    }
}
