package rinsebell.floor.unit;

import java.math.BigDecimal;

/**
 * A share by weight of the whole (w/w), in percent, from 0 to 100.
 *
 * @param value percent w/w
 */
public record Percent(BigDecimal value) implements Comparable<Percent> {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Ten volumes are three percent: the trade's convention, as in Regulation (EC) No 1223/2009, Annex III, 12(a). */
    private static final BigDecimal PERCENT_PER_VOLUME = new BigDecimal("0.3");

    public Percent {
        if (value.signum() < 0 || value.compareTo(HUNDRED) > 0) {
            throw new IllegalArgumentException("a share is from 0 to 100 percent: " + value);
        }
        value = Decimals.plain(value);
    }

    public static Percent of(String value) {
        return new Percent(new BigDecimal(value));
    }

    /** Peroxide of so many volumes, by the trade's convention (10, 20, 30, 40 volumes are 3, 6, 9, 12 percent). */
    public static Percent ofVolumes(int volumes) {
        return new Percent(PERCENT_PER_VOLUME.multiply(BigDecimal.valueOf(volumes)));
    }

    @Override
    public int compareTo(Percent other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value.toPlainString() + " %";
    }
}
