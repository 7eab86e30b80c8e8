package rinsebell.floor.basin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.VisitId;

/**
 * What is coming at the basins, seen from an instant: the plan that counts then. It is made for this floor and no older
 * one, by the dispatch rule, which keeps to what was announced wherever that harms nobody.
 *
 * @param station what there is to plan
 * @param plan who goes where when
 * @param mustStart when the water of each turn must be on for the sake of those behind it, by the anchor of its job
 */
public record Outlook(Station station, Plan plan, Map<Long, Instant> mustStart) {
    public static Outlook of(Floor floor, Instant now) {
        return of(Stations.at(floor, now));
    }

    static Outlook of(Station station) {
        var plan = new Dispatch().plan(station);
        return new Outlook(station, plan, plan.mustStart());
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

    /** Every such pair: if the first waited as long as it may, somebody would be late. */
    public List<Squeeze> squeezes() {
        var found = new ArrayList<Squeeze>();
        for (var basin : station.basins()) {
            var turns = plan.at(basin.number());
            for (var i = 1; i < turns.size(); i++) {
                squeeze(turns.get(i - 1), turns.get(i)).ifPresent(found::add);
            }
        }
        return List.copyOf(found);
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
