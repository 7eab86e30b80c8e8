package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.salon.Place;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.Visit;

/**
 * The dispatch rule: rinses in the order of their rinse-by, every one as late as the ones behind it allow. With m basins
 * and rinses of one length, the i-th of n must have water on by the earlier of its own rinse-by, and one rinse before the
 * (i + m)-th. The basins clash where a head cannot have water in time although everybody before it is rinsed as soon as
 * they may be: basins that are taken or out of order count. The same facts give the same turns: no clock, no solver.
 */
public final class Dispatch {
    private Dispatch() {}

    /** A turn by itself, and when the last fact that it depends on happened. */
    private record Waiting(Turn turn, Instant since) {}

    /** The turns of every head that has a rinse-by and is not at a basin yet, the earliest rinse-by first. */
    public static List<Turn> of(Floor floor) {
        return of(floor, visit -> HeadTiming.of(floor, visit));
    }

    /** The same, with the instants of each head as they were reckoned before. */
    public static List<Turn> of(Floor floor, Function<Visit, HeadTiming> timings) {
        var waiting = floor.openVisits().stream()
                .filter(visit -> !(visit.place() instanceof Place.Basin))
                .map(visit -> alone(timings.apply(visit)))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing((Waiting one) -> one.turn().rinseBy())
                        .thenComparing(one -> one.turn().visit().value()))
                .toList();
        var free = Free.basins(floor, timings);
        var turns = clashes(waiting, free, floor);
        return free.isEmpty()
                ? turns
                : together(turns, free.size(), floor.salon().policy().working().rinsing());
    }

    private static List<Turn> clashes(List<Waiting> waiting, List<Free> basins, Floor floor) {
        if (floor.salon().rooms().basins() == 0) {
            return waiting.stream().map(Waiting::turn).toList();
        }
        if (basins.isEmpty()) {
            return waiting.stream()
                    .map(one -> one.turn().clashing(Instants.later(one.since(), closedSince(floor))))
                    .toList();
        }
        var rinsing = floor.salon().policy().working().rinsing();
        var free = new ArrayList<>(basins);
        var turns = new ArrayList<Turn>();
        for (var next : waiting) {
            free.sort(Comparator.comparing(Free::from));
            var turn = next.turn();
            var water = Instants.later(free.get(0).from(), turn.earliest());
            var since = water.isAfter(turn.earliest()) ? since(next, free, floor) : next.since();
            free.set(0, new Free(water.plus(rinsing), since));
            turns.add(water.isAfter(turn.rinseBy()) ? turn.clashing(since) : turn);
        }
        return turns;
    }

    /** A head that waits for a basin depends on all that are taken or closed. */
    private static Instant since(Waiting next, List<Free> basins, Floor floor) {
        return basins.stream()
                .map(Free::since)
                .reduce(Instants.later(next.since(), closedSince(floor)), Instants::later);
    }

    private static Instant closedSince(Floor floor) {
        return floor.day().closedBasins().values().stream().reduce(Instant.MIN, Instants::later);
    }

    private static List<Turn> together(List<Turn> turns, int basins, Duration rinsing) {
        var planned = new ArrayList<>(turns);
        for (var i = turns.size() - 1 - basins; i >= 0; i--) {
            var turn = turns.get(i);
            var before = planned.get(i + basins).startBy().minus(rinsing);
            planned.set(i, turn.startingBy(Instants.earlier(turn.rinseBy(), before)));
        }
        return List.copyOf(planned);
    }

    private static Optional<Waiting> alone(HeadTiming timing) {
        return timing.rinseBy().map(limit -> waiting(timing, limit.at()));
    }

    private static Waiting waiting(HeadTiming timing, Instant rinseBy) {
        var applications = timing.timings().stream().map(Timing::application).toList();
        var first = applications.stream()
                .min(Comparator.comparing(Application::firstOn))
                .orElseThrow();
        var last = applications.stream()
                .max(Comparator.comparing(Application::firstOn))
                .orElseThrow();
        // Where rinse-by comes before ready-from, rinse-by wins: that is no clash of basins.
        var earliest = Instants.earlier(timing.readyFrom().orElse(first.firstOn()), rinseBy);
        var turn = new Turn(timing.visit().id(), first.id().value(), last.firstOn(), earliest, rinseBy, rinseBy, null);
        return new Waiting(turn, Instants.later(last.firstOn(), broughtForward(timing.visit(), applications)));
    }

    /** When somebody last decided to rinse at once, or the client had to ask for it. */
    private static Instant broughtForward(Visit visit, List<Application> applications) {
        var strands = applications.stream()
                .flatMap(application -> application.lastCheck().stream())
                .filter(StrandCheck::saysRinse)
                .map(StrandCheck::at);
        var scalp =
                visit.lastScalpCheck().stream().filter(ScalpCheck::saysRinse).map(ScalpCheck::at);
        var complaints = visit.severeComplaints().map(Complaint::at);
        return Stream.of(strands, scalp, complaints)
                .flatMap(instants -> instants)
                .reduce(Instant.MIN, Instants::later);
    }
}
