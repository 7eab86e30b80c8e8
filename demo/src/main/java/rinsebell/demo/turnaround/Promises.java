package rinsebell.demo.turnaround;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.VisitId;

/** Remembers what was said of each chair when the first bowl went on, until it is free. */
final class Promises {
    private final UnaryOperator<Floor> seen;
    private final Map<VisitId, List<Instant>> open = new HashMap<>();
    private final List<Promise> over = new ArrayList<>();

    private Promises(UnaryOperator<Floor> seen) {
        this.seen = seen;
    }

    /** What a salon says by all that it knows. */
    static Promises learned() {
        return new Promises(floor -> floor);
    }

    /** What it would say had it never measured anything. */
    static Promises byHouseNumbers() {
        return new Promises(floor -> Floor.of(floor.facts().stream()
                .filter(fact -> !(fact.event() instanceof SalonEvent.TimesLearned))
                .toList()));
    }

    void firstOn(Floor floor, VisitId visit, Instant now) {
        open.put(visit, Promise.of(seen.apply(floor).turnaround(now), visit));
    }

    void left(VisitId visit, Instant now, Duration waited) {
        var said = open.remove(visit);
        if (said != null) {
            over.add(new Promise(said, now, waited));
        }
    }

    List<Promise> over() {
        return List.copyOf(over);
    }
}
