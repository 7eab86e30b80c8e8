package rinsebell.floor.basin;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.visit.VisitId;

/**
 * What there is to plan: heads that have to be rinsed, and what they are rinsed with.
 *
 * @param from nothing can be planned before; {@link Instant#MIN} where only the facts count, whatever time it is
 * @param basins those in order, by number
 * @param hands at the basins, without those that whoever is there takes
 * @param jobs the coming stays
 * @param pins what people decided
 * @param announced the turns that were told to people, by the anchor of their job
 */
public record Station(
        Instant from,
        List<Basin> basins,
        Hands hands,
        List<Job> jobs,
        Map<VisitId, Pin> pins,
        Map<Long, Announced> announced) {
    public Station {
        basins = List.copyOf(basins);
        jobs = List.copyOf(jobs);
        pins = Map.copyOf(pins);
        announced = Map.copyOf(announced);
    }

    public Station(Instant from, List<Basin> basins, Hands hands, List<Job> jobs) {
        this(from, basins, hands, jobs, Map.of(), Map.of());
    }

    /** What was decided about a job; a head that burns is pinned nowhere. */
    public Optional<Pin> pin(Job job) {
        return job.isAtOnce() ? Optional.empty() : Optional.ofNullable(pins.get(job.visit()));
    }

    public Optional<Announced> announced(Job job) {
        return Optional.ofNullable(announced.get(job.anchor()));
    }

    /** The same, with nothing pinned. */
    public Station unpinned() {
        return new Station(from, basins, hands, jobs, Map.of(), announced);
    }

    /** The same with other jobs. */
    public Station with(List<Job> others) {
        return new Station(from, basins, hands, others, pins, announced);
    }
}
