package rinsebell.demo.basins;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * What the days of one band came to, by each way; the same seeds make the same table.
 *
 * @param days each way's, in the order of their seeds
 */
record Table(Band band, Map<Ways, List<Lived>> days) {
    private static final double MINUTE = 60;
    private static final double MOST = 0.95;

    private static final String HEAD = String.format(
            Locale.ROOT,
            "%-30s %7s %7s %5s %7s %8s %6s %6s %6s %7s %6s %5s%n",
            "",
            "late",
            "a day",
            "p95",
            "hard",
            "past by",
            "p95",
            "worst",
            "idle",
            "waited",
            "early",
            "held");

    /** @param seeds of the days */
    static Table of(Band band, List<Ways> ways, List<Long> seeds) {
        var days = new EnumMap<Ways, List<Lived>>(Ways.class);
        for (var way : ways) {
            days.put(
                    way,
                    seeds.parallelStream()
                            .map(seed -> way.live(Day.of(band, seed)))
                            .toList());
        }
        return new Table(band, days);
    }

    long late(Ways way) {
        return lived(way).stream().mapToLong(Lived::late).sum();
    }

    private List<Lived> lived(Ways way) {
        return days.getOrDefault(way, List.of());
    }

    @Override
    public String toString() {
        var told = new StringBuilder(
                String.format(Locale.ROOT, "basin use %.2f to %.2f, %d days%n", band.from(), band.until(), count()));
        told.append(HEAD);
        days.keySet().forEach(way -> told.append(row(way)));
        days.keySet().stream().filter(way -> way.compareTo(Ways.AS_SOON) > 0).forEach(way -> told.append(lost(way)));
        return told.toString();
    }

    private int count() {
        return lived(Ways.FIRST_COME).size();
    }

    private String row(Ways way) {
        var heads = sum(way, day -> day.heads().size());
        return String.format(
                Locale.ROOT,
                "%-30s %5.1f %% %7.1f %5.0f %7.1f %8.1f %6.0f %6.0f %4.0f %% %7.1f %6.1f %5.1f%n",
                way,
                100 * late(way) / heads,
                mean(way, Lived::late),
                most(way, Lived::late),
                mean(way, Lived::lateHard),
                mean(way, day -> day.sum(Lived.Went::past)) / MINUTE,
                most(way, day -> day.sum(Lived.Went::past)) / MINUTE,
                lived(way).stream().mapToLong(Lived::worst).max().orElse(0) / MINUTE,
                100 * mean(way, Lived::idle),
                sum(way, day -> day.sum(Lived.Went::waited)) / heads / MINUTE,
                sum(way, day -> day.sum(Lived.Went::early)) / heads / MINUTE,
                sum(way, day -> day.sum(Lived.Went::held)) / heads / MINUTE);
    }

    private double sum(Ways way, ToDoubleFunction<Lived> figure) {
        return lived(way).stream().mapToDouble(figure).sum();
    }

    private double mean(Ways way, ToDoubleFunction<Lived> figure) {
        return sum(way, figure) / lived(way).size();
    }

    /** The smallest figure that at least 95 of 100 days do not exceed. */
    private double most(Ways way, ToDoubleFunction<Lived> figure) {
        var sorted = lived(way).stream().mapToDouble(figure).sorted().toArray();
        return sorted[(int) Math.ceil(MOST * sorted.length) - 1];
    }

    private String lost(Ways way) {
        var seeds = losing(way).boxed().toList();
        return String.format(Locale.ROOT, "%s loses %d of %d days, seeds %s%n", way, seeds.size(), count(), seeds);
    }

    /** The days on which more heads are late than by the better of the two ways that need no plan. */
    LongStream losing(Ways way) {
        return LongStream.range(0, count())
                .filter(day -> at(way, day).late()
                        > Math.min(
                                at(Ways.FIRST_COME, day).late(),
                                at(Ways.EARLIEST, day).late()))
                .map(day -> at(way, day).seed());
    }

    private Lived at(Ways way, long day) {
        return lived(way).get((int) day);
    }
}
