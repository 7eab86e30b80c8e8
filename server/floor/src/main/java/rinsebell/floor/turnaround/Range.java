package rinsebell.floor.turnaround;

import java.time.Instant;
import java.util.Arrays;
import rinsebell.floor.report.Quantile;

/**
 * When something will be.
 *
 * @param likely as often sooner as later
 * @param latest in nine of ten cases it is by then
 */
public record Range(Instant likely, Instant latest) {
    private static final double LIKELY = 0.5;
    private static final double LATEST = 0.9;

    /** @param epochSeconds one for each run */
    static Range of(double[] epochSeconds) {
        var sorted = epochSeconds.clone();
        Arrays.sort(sorted);
        return new Range(at(sorted, LIKELY), at(sorted, LATEST));
    }

    private static Instant at(double[] sorted, double part) {
        return Instant.ofEpochSecond(Math.round(Quantile.ofSorted(sorted, part)));
    }
}
