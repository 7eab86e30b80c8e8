package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.salon.Place;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/**
 * From when a basin can take the next head.
 *
 * @param from when it is empty at the soonest; {@link Instant#MIN} where nobody is at it
 * @param since when the last fact that this depends on happened
 */
record Free(Instant from, Instant since) {
    /** Every basin that is in order. */
    static List<Free> basins(Floor floor, Function<Visit, HeadTiming> timings) {
        var closed = floor.day().closedBasins();
        return IntStream.rangeClosed(1, floor.salon().rooms().basins())
                .filter(number -> !closed.containsKey(number))
                .mapToObj(number -> of(floor, Place.basin(number), timings))
                .toList();
    }

    private static Free of(Floor floor, Place basin, Function<Visit, HeadTiming> timings) {
        var rinsing = floor.salon().policy().working().rinsing();
        return floor.at(basin).stream()
                .map(visit -> after(timings.apply(visit), rinsing))
                .reduce(new Free(Instant.MIN, Instant.MIN), Free::andLater);
    }

    /** Whoever is there is rinsed as soon as it may be, and was if nothing is on any more. */
    private static Free after(HeadTiming timing, Duration rinsing) {
        var visit = timing.visit();
        var since = visit.stay().placeSince();
        var water = timing.rinseBy()
                .map(limit -> Instants.earlier(timing.readyFrom().orElse(since), limit.at()))
                .or(() -> visit.lastOff().filter(off -> !timing.isAnythingOn()).map(off -> off.at()))
                .orElse(since);
        return new Free(
                Instants.later(since, water).plus(rinsing),
                visit.onHair().stream().map(Application::firstOn).reduce(since, Instants::later));
    }

    private Free andLater(Free other) {
        return new Free(Instants.later(from, other.from), Instants.later(since, other.since));
    }
}
