package rinsebell.planner;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Announced;

/**
 * Gives basins to turns of which only the water is known. Where never more stay at once than there are basins, each in the
 * order of their water finds one that is free.
 */
final class Colouring {
    private final Station station;

    Colouring(Station station) {
        this.station = station;
    }

    /** Each at the basin that was announced, or else where it was, or else where somebody left last. */
    List<Turn> of(List<Turn> turns) {
        var free = new HashMap<Integer, Instant>();
        station.basins().forEach(basin -> free.put(basin.number(), basin.freeFrom()));
        var coloured = new ArrayList<Turn>();
        var inOrder = turns.stream()
                .sorted(Comparator.comparing(Turn::water)
                        .thenComparing(turn -> turn.job().anchor()))
                .toList();
        for (var turn : inOrder) {
            var told = station.announced(turn.job()).map(Announced::basin).orElse(0);
            var basin = station.basins().stream()
                    .map(Basin::number)
                    .filter(number -> !free.getOrDefault(number, Instant.MAX).isAfter(turn.water()))
                    .max(Comparator.comparing((Integer number) -> number.equals(told))
                            .thenComparing(number -> number == turn.basin())
                            .thenComparing(number -> free.getOrDefault(number, Instant.MAX)))
                    .orElseThrow();
            free.put(basin, turn.end());
            coloured.add(new Turn(turn.job(), basin, turn.water()));
        }
        return coloured;
    }
}
