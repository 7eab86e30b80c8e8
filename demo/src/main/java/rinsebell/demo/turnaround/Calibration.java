package rinsebell.demo.turnaround;

import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;

/**
 * How many chairs were free by what was said of them.
 *
 * @param learned by what the salons had measured
 * @param house by house numbers, of the same chairs
 */
record Calibration(List<Promise> learned, List<Promise> house) {
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

    @Override
    public String toString() {
        var told = new StringBuilder(String.format(Locale.ROOT, "%,d chairs%n", chairs()));
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
