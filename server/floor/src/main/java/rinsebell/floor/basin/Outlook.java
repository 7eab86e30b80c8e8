package rinsebell.floor.basin;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.VisitId;

/**
 * What is coming at the basins, seen from an instant: the plan that counts then. It is made for this floor and no older
 * one, by the dispatch rule, which keeps to what was announced wherever that harms nobody.
 */
public final class Outlook {
    /** Nobody reads more sentences; those whose turn comes first are told. House number. */
    private static final int MOST_SQUEEZES = 5;

    private final Station station;
    private final Plan plan;
    private final Map<Long, Instant> mustStart;
    private volatile @Nullable List<Squeeze> squeezes;

    private Outlook(Station station, Plan plan) {
        this.station = station;
        this.plan = plan;
        this.mustStart = plan.mustStart();
    }

    public static Outlook of(Floor floor, Instant now) {
        return of(Stations.at(floor, now));
    }

    static Outlook of(Station station) {
        return new Outlook(station, new Dispatch().plan(station));
    }

    /** What there is to plan. */
    public Station station() {
        return station;
    }

    /** Who goes where when. */
    public Plan plan() {
        return plan;
    }

    /** Whether it is seen from the minute of an instant. */
    public boolean isOf(Instant now) {
        return station.from().equals(Stations.minute(now));
    }

    /** When the water of a turn must be on, so that everybody behind it is in time as well. */
    public Instant mustStart(Turn turn) {
        return mustStart.getOrDefault(turn.job().anchor(), turn.job().latest());
    }

    public Optional<Turn> turn(VisitId visit) {
        return plan.of(visit);
    }

    /**
     * Two heads that have to share a basin, so that one of them can't wait for its own rinse-by.
     *
     * @param first who goes first
     * @param then who goes after it
     * @param by the later of their two limits
     */
    public record Squeeze(Turn first, Turn then, Instant by) {}

    /**
     * The first few such pairs: if the first waited as long as it may, somebody would be late. Each is asked by a plan of
     * its own, so they are looked for once.
     */
    public List<Squeeze> squeezes() {
        var known = squeezes;
        if (known == null) {
            known = station.basins().stream()
                    .flatMap(basin -> pairs(plan.at(basin.number())))
                    .sorted(Comparator.comparing(pair -> pair.first().water()))
                    .flatMap(pair -> squeeze(pair.first(), pair.then()).stream())
                    .limit(MOST_SQUEEZES)
                    .toList();
            squeezes = known;
        }
        return known;
    }

    private record Pair(Turn first, Turn then) {}

    private static Stream<Pair> pairs(List<Turn> turns) {
        return IntStream.range(1, turns.size()).mapToObj(i -> new Pair(turns.get(i - 1), turns.get(i)));
    }

    private Optional<Squeeze> squeeze(Turn first, Turn then) {
        var latest = first.job().latest();
        var pushes = latest.plus(first.job().work().stay()).isAfter(then.job().latest());
        return !first.isLate() && pushes && !isSafeIfItWaits(first.job())
                ? Optional.of(new Squeeze(
                        first, then, Instants.later(latest, then.job().latest())))
                : Optional.empty();
    }

    private boolean isSafeIfItWaits(Job job) {
        var waits = new Job(
                job.visit(),
                job.anchor(),
                job.knownSince(),
                job.latest(),
                job.latest(),
                job.latest(),
                job.harm(),
                job.work());
        var others = station.jobs().stream().filter(other -> !other.equals(job));
        var waited = new Dispatch()
                .plan(station.with(Stream.concat(Stream.of(waits), others).toList()));
        return waited.late().size() <= plan.late().size();
    }

    /** Whoever would be in time if nothing were pinned. */
    public List<Turn> lateByPins() {
        if (station.pins().isEmpty() || plan.late().isEmpty()) {
            return List.of();
        }
        var free = new Dispatch().plan(station.unpinned());
        return plan.late().stream()
                .filter(turn ->
                        free.turns().stream().anyMatch(other -> other.job().equals(turn.job()) && !other.isLate()))
                .toList();
    }
}
