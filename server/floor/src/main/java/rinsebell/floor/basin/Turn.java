package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.visit.VisitId;

/**
 * A head's turn at a basin.
 *
 * @param job what it is for
 * @param basin number, from 1
 * @param water when water is on
 */
public record Turn(Job job, int basin, Instant water) {
    public VisitId visit() {
        return job.visit();
    }

    /** When the work before the basin begins. */
    public Instant begin() {
        return water.minus(job.work().before());
    }

    /** When the basin is free again. */
    public Instant end() {
        return water.plus(job.work().stay());
    }

    public boolean isLate() {
        return water.isAfter(job.latest());
    }

    /** By how much water comes after the rinse-by; zero when it is in time. */
    public Duration lateBy() {
        return isLate() ? Duration.between(job.latest(), water) : Duration.ZERO;
    }

    /** It goes before it had best go, to leave a basin or a pair of hands for others. */
    public boolean isBroughtForward() {
        return water.isBefore(job.wanted());
    }

    /** The turn as people are told it. */
    public Announced told() {
        return new Announced(basin, water);
    }
}
