package rinsebell.floor.turnaround;

import java.time.Instant;
import java.util.Arrays;
import rinsebell.floor.report.Quantile;

/** When something was in each of many runs. */
final class Spread {
    private static final double LIKELY = 0.5;
    private static final double LATEST = 0.9;

    private final double[] sorted;

    /** @param epochSeconds one for each run */
    Spread(double[] epochSeconds) {
        sorted = epochSeconds.clone();
        Arrays.sort(sorted);
    }

    /** By then it is in one part of all cases, after Hyndman and Fan's type 8. */
    Instant at(double part) {
        return Instant.ofEpochSecond(Math.round(Quantile.ofSorted(sorted, part)));
    }

    Range range() {
        return new Range(at(LIKELY), at(LATEST));
    }
}
