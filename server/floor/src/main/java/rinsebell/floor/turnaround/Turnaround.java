package rinsebell.floor.turnaround;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rinsebell.floor.Floor;
import rinsebell.floor.visit.VisitId;

/**
 * When each chair comes free, and when whoever waits is done: a few hundred runs of the rest of the day, each with lengths
 * drawn from what the salon has measured or from house numbers. Heads go to the basins as they are done, each to the basin
 * that is free first for as long as it takes. The same floor at the same minute gives the same.
 */
public final class Turnaround {
    private final Instant now;
    private final Map<VisitId, Spread> ends;
    private final Map<Integer, Range> chairs;
    private final List<Waits> waits;

    /**
     * Somebody who waits for a chair.
     *
     * @param visit who; empty for somebody who might come
     * @param begins when their chair is free
     * @param done when they are
     * @param chair the one that most likely comes free for them
     */
    public record Waits(Optional<VisitId> visit, Range begins, Range done, int chair) {}

    private Turnaround(Instant now, Map<VisitId, Spread> ends, Map<Integer, Range> chairs, List<Waits> waits) {
        this.now = now;
        this.ends = ends;
        this.chairs = chairs;
        this.waits = waits;
    }

    /** Of everybody who is here. */
    public static Turnaround of(Floor floor, Instant now) {
        return of(floor, now, Optional.empty());
    }

    private static Instant minute(Instant at) {
        return at.truncatedTo(ChronoUnit.MINUTES);
    }

    /** Of everybody who is here, and of somebody who would come behind them all. */
    public static Turnaround of(Floor floor, Instant now, Wish wish) {
        return of(floor, now, Optional.of(wish));
    }

    private static Turnaround of(Floor floor, Instant now, Optional<Wish> wish) {
        var from = minute(now);
        var runs = new Runs(floor, from, wish);
        return new Turnaround(from, runs.ends(), runs.chairs(), runs.waits());
    }

    /** Whether it is seen from the minute of an instant. */
    public boolean isOf(Instant other) {
        return now.equals(minute(other));
    }

    /** When a client leaves; empty for whoever waits. */
    public Optional<Range> end(VisitId visit) {
        return Optional.ofNullable(ends.get(visit)).map(Spread::range);
    }

    /**
     * By when a client has left in one part of all cases; empty for whoever waits.
     *
     * @param part between 0 and 1
     */
    public Optional<Instant> end(VisitId visit, double part) {
        return Optional.ofNullable(ends.get(visit)).map(spread -> spread.at(part));
    }

    /** When each taken chair is free, by number. */
    public Map<Integer, Range> chairs() {
        return chairs;
    }

    /** When a chair is free for somebody who waits; empty for whoever does not. */
    public Optional<Waits> waits(VisitId visit) {
        return waits.stream()
                .filter(one -> one.visit().filter(visit::equals).isPresent())
                .findFirst();
    }

    /** When a chair is free for whoever might come; empty where nobody asked for them. */
    public Optional<Waits> comes() {
        return waits.stream().filter(one -> one.visit().isEmpty()).findFirst();
    }

    /** Whoever waits for a chair, in their order; who might come is the last. */
    public List<Waits> waits() {
        return waits;
    }
}
