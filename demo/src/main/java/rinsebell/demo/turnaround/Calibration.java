package rinsebell.demo.turnaround;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import rinsebell.floor.report.Quantile;

/**
 * How many chairs were free by what was said of them.
 *
 * @param learned by what the salons had measured
 * @param house by house numbers, of the same chairs
 */
record Calibration(List<Promise> learned, List<Promise> house) {
    private static final double MINUTE = 60;

    /**
     * Salons that have just learned.
     *
     * @param seed of the first
     * @param salons how many
     * @param days of each that count
     */
    static Calibration of(long seed, int salons, int days) {
        var all = LongStream.range(seed, seed + salons)
                .parallel()
                .mapToObj(one -> Salon.live(one, days))
                .toList();
        return new Calibration(
                all.stream().flatMap(one -> one.learned.stream()).toList(),
                all.stream().flatMap(one -> one.house.stream()).toList());
    }

    int chairs() {
        return learned.size();
    }

    /** The share of these that were free by what was said for a part of a hundred cases. */
    static double share(List<Promise> promises, int part) {
        return promises.stream().filter(promise -> promise.isKept(part)).count() / (double) promises.size();
    }

    private DoubleStream waited() {
        return learned.stream().mapToDouble(promise -> promise.waited().toSeconds() / MINUTE);
    }

    @Override
    public String toString() {
        var told = new StringBuilder(String.format(
                Locale.ROOT,
                "%,d chairs; for a basin they waited %.1f min in the mean, one of ten more than %.1f%n",
                chairs(),
                waited().average().orElse(0),
                Quantile.of(waited().toArray(), 0.9)));
        told.append(String.format(Locale.ROOT, "%-10s %10s %14s%n", "promised", "learned", "house numbers"));
        for (var part : Promise.PARTS) {
            told.append(String.format(
                    Locale.ROOT,
                    "%8d %% %8.1f %% %12.1f %%%n",
                    part,
                    100 * share(learned, part),
                    100 * share(house, part)));
        }
        return told.toString();
    }
}
