package rinsebell.floor.basin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Visit;

/**
 * Heads that cannot have water in time, by the dispatch rule alone: no clock and no solver, so that the same facts name
 * the same heads.
 */
public final class Clashes {
    private Clashes() {}

    /**
     * @param job what cannot be done in time
     * @param since when the last fact that it depends on happened
     */
    public record Clash(Job job, Instant since) {}

    /** Where a salon has no basins at all, nobody expects one. */
    public static List<Clash> of(Floor floor, Function<Visit, HeadTiming> timings) {
        if (floor.salon().rooms().basins() == 0) {
            return List.of();
        }
        var station = Stations.ofFacts(floor, timings);
        var plan = new Dispatch().firstSafe(station);
        var known = new Known(floor, station, plan);
        var clashes = new ArrayList<Clash>();
        doubtful(station, plan).forEach(turn -> clashes.add(new Clash(turn.job(), known.since(turn))));
        plan.without().forEach(job -> clashes.add(new Clash(job, known.since(job))));
        return List.copyOf(clashes);
    }

    /** Who is late, and whoever's turn could not be carried out: were the rule ever wrong, it would ring, not be silent. */
    private static List<Turn> doubtful(Station station, Plan plan) {
        var faulty = Verifier.faults(station, plan).stream()
                .map(Verifier.Fault::job)
                .collect(Collectors.toUnmodifiableSet());
        return plan.turns().stream()
                .filter(turn -> turn.isLate() || faulty.contains(turn.job()))
                .toList();
    }

    /** Since when something is known. */
    private record Known(Floor floor, Station station, Plan plan) {
        /** Who is late depends on all who go before, and on every basin. */
        Instant since(Turn late) {
            return plan.turns().stream()
                    .filter(turn -> !turn.water().isAfter(late.water()))
                    .map(turn -> turn.job().knownSince())
                    .reduce(basins(), Instants::later);
        }

        Instant since(Job without) {
            return Instants.later(without.knownSince(), basins());
        }

        private Instant basins() {
            var closed = floor.day().closedBasins().values().stream().reduce(Instant.MIN, Instants::later);
            var pinned = station.pins().values().stream().map(Pin::since).reduce(closed, Instants::later);
            var told = Instants.later(pinned, floor.salon().basinHours().since());
            return station.basins().stream().map(Basin::since).reduce(told, Instants::later);
        }
    }
}
