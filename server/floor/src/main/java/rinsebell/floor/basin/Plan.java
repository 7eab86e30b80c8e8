package rinsebell.floor.basin;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rinsebell.floor.visit.VisitId;

/**
 * Who is to be at which basin when.
 *
 * @param turns in the order of their water, then of their basins
 * @param without jobs that find no basin or no hands at all, at any time
 */
public record Plan(List<Turn> turns, List<Job> without) {
    public static final Plan EMPTY = new Plan(List.of(), List.of());

    public Plan {
        turns = turns.stream()
                .sorted(Comparator.comparing(Turn::water)
                        .thenComparing(Turn::basin)
                        .thenComparing(turn -> turn.job().anchor()))
                .toList();
        without = List.copyOf(without);
    }

    /** The next turn of a head. */
    public Optional<Turn> of(VisitId visit) {
        return turns.stream().filter(turn -> turn.visit().equals(visit)).findFirst();
    }

    public List<Turn> at(int basin) {
        return turns.stream().filter(turn -> turn.basin() == basin).toList();
    }

    /** Whether everybody has water in time. */
    public boolean isSafe() {
        return without.isEmpty() && turns.stream().noneMatch(Turn::isLate);
    }

    public List<Turn> late() {
        return turns.stream().filter(Turn::isLate).toList();
    }

    /**
     * When the water of each turn must be on so that those behind it at the same basin are not pushed past their own
     * rinse-by, by the anchor of its job; its own rinse-by where nobody is behind it. A turn that is late, or behind which
     * somebody is, must not slip at all.
     */
    public Map<Long, Instant> mustStart() {
        var next = new HashMap<Integer, Instant>();
        var all = new HashMap<Long, Instant>();
        for (var i = turns.size() - 1; i >= 0; i--) {
            var turn = turns.get(i);
            var own = turn.isLate() ? turn.water() : turn.job().latest();
            var behind = next.get(turn.basin());
            var leaves = behind == null ? own : behind.minus(turn.job().work().stay());
            var must = leaves.isBefore(own) ? leaves : own;
            all.put(turn.job().anchor(), must);
            next.put(turn.basin(), must);
        }
        return all;
    }
}
