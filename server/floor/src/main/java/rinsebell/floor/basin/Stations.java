package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/** What there is to plan on a floor. */
public final class Stations {
    /** Whoever is still at a basin after the time that it takes is taken to need so much more. House number. */
    private static final Duration LINGERS = Duration.ofMinutes(2);

    /** Whoever is on a break is taken to be back after so much more. House number. */
    private static final Duration BREAK = Duration.ofMinutes(15);

    private final Floor floor;
    private final Function<Visit, HeadTiming> timings;

    private Stations(Floor floor, Function<Visit, HeadTiming> timings) {
        this.floor = floor;
        this.timings = timings;
    }

    /**
     * As the facts tell it, whatever time it is: heads are rinsed as soon as they may be. What bells are reckoned from.
     *
     * @param timings the instants of each head, as they were reckoned before
     */
    public static Station ofFacts(Floor floor, Function<Visit, HeadTiming> timings) {
        var all = new Stations(floor, timings);
        return new Station(
                Instant.MIN,
                all.basins(Instant.MIN),
                all.hands(Instant.MIN),
                all.jobs(),
                floor.day().pins(),
                Map.of());
    }

    public static Station ofFacts(Floor floor) {
        return ofFacts(floor, visit -> HeadTiming.of(floor, visit));
    }

    /** From an instant on, to the minute that it is in: nothing can be done sooner. */
    public static Station at(Floor floor, Instant now, Function<Visit, HeadTiming> timings) {
        var all = new Stations(floor, timings);
        var from = minute(now);
        return new Station(
                from,
                all.basins(from),
                all.hands(from),
                all.jobs().stream().map(job -> notBefore(job, from)).toList(),
                floor.day().pins(),
                floor.day().announced());
    }

    static Instant minute(Instant now) {
        return now.truncatedTo(ChronoUnit.MINUTES);
    }

    public static Station at(Floor floor, Instant now) {
        return at(floor, now, visit -> HeadTiming.of(floor, visit));
    }

    /** Nobody says when work before the basin is begun: it is taken to be under way where it has to be. */
    private static Job notBefore(Job job, Instant from) {
        var soonest = from.plus(job.work().before());
        var begun = Instants.later(from, Instants.earlier(soonest, job.latest()));
        var earliest = Instants.later(job.earliest(), begun);
        return new Job(
                job.visit(),
                job.anchor(),
                job.knownSince(),
                earliest,
                Instants.later(job.wanted(), earliest),
                job.latest(),
                job.harm(),
                job.work());
    }

    private List<Job> jobs() {
        return floor.openVisits().stream()
                .filter(visit -> !(visit.place() instanceof Place.Basin))
                .flatMap(visit -> Jobs.of(timings.apply(visit), floor).stream())
                .toList();
    }

    private List<Basin> basins(Instant from) {
        var closed = floor.day().closedBasins();
        return IntStream.rangeClosed(1, floor.salon().rooms().basins())
                .filter(number -> !closed.containsKey(number))
                .mapToObj(number -> basin(number, from))
                .toList();
    }

    private Basin basin(int number, Instant from) {
        return there(number).stream()
                .map(visit -> new Basin(number, end(visit, from), since(visit)))
                .reduce(new Basin(number, Instant.MIN, Instant.MIN), Stations::andLater);
    }

    private static Basin andLater(Basin one, Basin other) {
        return new Basin(
                one.number(),
                Instants.later(one.freeFrom(), other.freeFrom()),
                Instants.later(one.since(), other.since()));
    }

    private List<Visit> there(int basin) {
        return floor.at(Place.basin(basin));
    }

    private static Instant since(Visit visit) {
        return visit.onHair().stream()
                .map(Application::firstOn)
                .reduce(visit.stay().placeSince(), Instants::later);
    }

    private Instant end(Visit visit, Instant from) {
        var end = water(visit).plus(stay(visit));
        return end.isAfter(from) ? end : from.plus(LINGERS);
    }

    /** Whoever is at a basin is rinsed as soon as it may be, and was if nothing is on any more. */
    private Instant water(Visit visit) {
        var timing = timings.apply(visit);
        var since = visit.stay().placeSince();
        var water = timing.rinseBy()
                .map(limit -> Instants.earlier(timing.readyFrom().orElse(since), limit.at()))
                .or(() -> visit.lastOff().filter(off -> !timing.isAnythingOn()).map(off -> off.at()))
                .orElse(since);
        return Instants.later(since, water);
    }

    /** From water on, with a toner that is still to come. */
    private Duration stay(Visit visit) {
        return new Middles(floor.salon())
                .work(Duration.ZERO, false, Toners.isToCome(floor, visit))
                .stay();
    }

    /** Those of the hours that were entered which whoever is at a basin leaves. */
    private Hands hands(Instant from) {
        var left = Shifts.hands(floor, from);
        for (var basin : basins(from)) {
            for (var visit : there(basin.number())) {
                left = left.without(water(visit), end(visit, from));
            }
        }
        for (var away :
                from.equals(Instant.MIN) ? List.<StaffId>of() : floor.day().onBreak()) {
            left = Shifts.covers(floor.salon(), away, from) ? left.without(from, from.plus(BREAK)) : left;
        }
        return left;
    }
}
