package rinsebell.demo.basins;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToLongFunction;
import rinsebell.demo.basins.Happened.What;

/**
 * What a day came to, told from what happened.
 *
 * @param seed of the day
 * @param heads each of them, as it went
 * @param idle which part of the basins' time nobody was at them, from the first water until the last head left
 */
record Lived(long seed, List<Went> heads, double idle) {
    Lived {
        heads = List.copyOf(heads);
    }

    /**
     * How it went for one head, in seconds.
     *
     * @param hard whether a late rinse hurts hair
     * @param past from its rinse-by to water; 0 where it was in time
     * @param waited from when it was done to water; 0 where it was not done yet
     * @param early from water to when it would have been light enough; 0 where it was
     * @param held from its arrival until somebody mixed for it
     */
    record Went(boolean hard, long past, long waited, long early, long held) {}

    static Lived of(Day day, List<Happened> log) {
        var told = new Told(log);
        var heads = day.heads().stream().map(told::went).toList();
        return new Lived(day.seed(), heads, told.idle(day));
    }

    long late() {
        return heads.stream().filter(head -> head.past() > 0).count();
    }

    long lateHard() {
        return heads.stream().filter(head -> head.past() > 0 && head.hard()).count();
    }

    long worst() {
        return heads.stream().mapToLong(Went::past).max().orElse(0);
    }

    long sum(ToLongFunction<Went> figure) {
        return heads.stream().mapToLong(figure).sum();
    }

    /** The instants of a log, by what happened and to whom. */
    private static final class Told {
        private final Map<What, Map<Integer, Long>> instants = new EnumMap<>(What.class);

        Told(List<Happened> log) {
            log.forEach(one -> of(one.what()).put(one.head(), one.at()));
        }

        private Map<Integer, Long> of(What what) {
            return instants.computeIfAbsent(what, none -> new HashMap<>());
        }

        private long at(What what, Head head) {
            return Objects.requireNonNull(of(what).get(head.number()), () -> "never " + what + ": " + head);
        }

        Went went(Head head) {
            var on = at(What.ON, head);
            var water = at(What.WATER, head) - on;
            return new Went(
                    head.kind().lightens(),
                    Math.max(0, water - head.by()),
                    Math.max(0, water - head.done()),
                    Math.max(0, head.done() - water),
                    at(What.MIXES, head) - at(What.ARRIVES, head));
        }

        double idle(Day day) {
            var taken = day.heads().stream()
                    .mapToLong(head -> at(What.LEAVES, head) - at(What.WATER, head))
                    .sum();
            var first = of(What.WATER).values().stream().min(Long::compare).orElse(0L);
            var last = of(What.LEAVES).values().stream().max(Long::compare).orElse(1L);
            return 1 - taken / (double) ((last - first) * day.basins());
        }
    }
}
