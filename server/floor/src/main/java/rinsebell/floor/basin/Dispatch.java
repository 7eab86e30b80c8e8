package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.salon.Place;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/**
 * The dispatch rule: rinses in the order of their rinse-by, every one as late as the ones behind it allow. With m basins
 * and rinses of one length, the i-th of n must have water on by the earlier of its own rinse-by, and one rinse before the
 * (i + m)-th; where that is before it is ready, the basins clash. The same facts give the same turns: no clock, no
 * solver.
 */
public final class Dispatch {
    private Dispatch() {}

    /** The turns of every head that has a rinse-by and is not at a basin yet, the earliest rinse-by first. */
    public static List<Turn> of(Floor floor) {
        var turns = floor.openVisits().stream()
                .filter(visit -> !(visit.place() instanceof Place.Basin))
                .map(visit -> alone(floor, visit))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(Turn::rinseBy)
                        .thenComparing(turn -> turn.visit().value()))
                .toList();
        var rooms = floor.salon().rooms();
        var basins = rooms.basins() - floor.day().closedBasins().size();
        return basins <= 0
                ? turns
                : together(turns, basins, floor.salon().policy().working().rinsing());
    }

    private static List<Turn> together(List<Turn> turns, int basins, Duration rinsing) {
        var planned = new ArrayList<>(turns);
        for (var i = turns.size() - 1 - basins; i >= 0; i--) {
            var turn = turns.get(i);
            var before = planned.get(i + basins).startBy().minus(rinsing);
            planned.set(i, startingBy(turn, Instants.earlier(turn.rinseBy(), before)));
        }
        return List.copyOf(planned);
    }

    private static Turn startingBy(Turn turn, Instant startBy) {
        return new Turn(turn.visit(), turn.anchor(), turn.knownSince(), turn.earliest(), startBy, turn.rinseBy());
    }

    private static Optional<Turn> alone(Floor floor, Visit visit) {
        var timing = HeadTiming.of(floor, visit);
        return timing.rinseBy().map(limit -> turn(timing, limit.at()));
    }

    private static Turn turn(HeadTiming timing, Instant rinseBy) {
        var applications = timing.timings().stream().map(Timing::application).toList();
        var first = applications.stream()
                .min(Comparator.comparing(Application::firstOn))
                .orElseThrow();
        var last = applications.stream()
                .max(Comparator.comparing(Application::firstOn))
                .orElseThrow();
        // Where rinse-by comes before ready-from, rinse-by wins: that is no clash of basins.
        var earliest = Instants.earlier(timing.readyFrom().orElse(first.firstOn()), rinseBy);
        return new Turn(timing.visit().id(), first.id().value(), last.firstOn(), earliest, rinseBy, rinseBy);
    }
}
