package rinsebell.demo.measure;

import java.util.Arrays;
import java.util.Locale;

/** What came of many measurements of one time. */
public final class Quantiles {
    private final long[] nanos;

    /** @param nanos each time; there is at least one */
    public Quantiles(long[] nanos) {
        this.nanos = nanos.clone();
        Arrays.sort(this.nanos);
    }

    /** The smallest time that at least this share of all does not exceed, in milliseconds. */
    public double millis(double share) {
        var at = (int) Math.ceil(share * nanos.length) - 1;
        return nanos[Math.max(0, at)] / 1e6;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "p50 %.2f ms, p99 %.2f ms, worst %.2f ms", millis(0.5), millis(0.99), millis(1));
    }
}
