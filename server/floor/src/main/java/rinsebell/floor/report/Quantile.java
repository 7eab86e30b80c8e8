package rinsebell.floor.report;

import java.util.Arrays;

/** Sample quantiles after Hyndman and Fan (Am Stat 1996;50:361-365), in the definition they recommend: type 8. */
public final class Quantile {
    private static final double THIRD = 1.0 / 3;

    private Quantile() {}

    /**
     * The value below which a part of the sample lies.
     *
     * @param part from 0 to 1
     * @throws IllegalArgumentException if there is no value, or {@code part} is no part
     */
    public static double of(double[] sample, double part) {
        if (sample.length == 0 || !(part >= 0 && part <= 1)) {
            throw new IllegalArgumentException("no quantile " + part + " of " + sample.length + " values");
        }
        var sorted = sample.clone();
        Arrays.sort(sorted);
        return ofSorted(sorted, part);
    }

    /** The same of a sample that is in the order of size already, and not empty. */
    public static double ofSorted(double[] sorted, double part) {
        var place = Math.max(1, Math.min(sorted.length, (sorted.length + THIRD) * part + THIRD));
        var below = (int) Math.floor(place);
        var above = Math.min(sorted.length, below + 1);
        return sorted[below - 1] + (place - below) * (sorted[above - 1] - sorted[below - 1]);
    }
}
