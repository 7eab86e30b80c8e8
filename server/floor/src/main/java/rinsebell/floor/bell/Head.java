package rinsebell.floor.bell;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.visit.Visit;

/**
 * A head that bells may ring for. A closed visit rings nothing. It outlasts the floor that it was reckoned on and does not
 * keep it, or each floor would keep all before it.
 */
final class Head {
    private final Policy policy;
    private final Visit visit;
    private final HeadTiming timing;
    private final HeadTiming clocks;
    private final boolean burning;

    /** @param seen what somebody has acknowledged of this head's own bells */
    Head(Floor floor, Visit visit, Set<Seen> seen) {
        this.policy = floor.salon().policy();
        this.visit = visit;
        this.timing = HeadTiming.of(floor, visit);
        this.clocks = timing.apartFromDiscomfort();
        this.burning = timing.isOffAtOnce()
                && DiscomfortBells.atOnce(this)
                        .anyMatch(bell ->
                                !bell.seen(seen).isSeenWhole(bell.stages().get(0)));
    }

    Visit visit() {
        return visit;
    }

    HeadTiming timing() {
        return timing;
    }

    /** The instants by directions and decisions: what is on keeps them, whatever the client complains of. */
    HeadTiming clocks() {
        return clocks;
    }

    /**
     * Whether discomfort rings, louder than all else and for everyone, to get off what is on: then nothing else has to
     * ring for that. Once somebody has seen it, it is quiet, and the clocks of what is still on ring as ever.
     */
    boolean isBurning() {
        return burning;
    }

    Policy policy() {
        return policy;
    }

    long subject() {
        return visit.id().value();
    }

    Bell bell(BellKind kind, long subject, long anchor, List<Stage> stages) {
        return Bell.alone(new BellKey(kind, subject, anchor), visit.id(), List.of(), stages);
    }

    Bell bell(BellKind kind, long subject, long anchor, Reason reason, Stage stage) {
        return Bell.alone(new BellKey(kind, subject, anchor), visit.id(), List.of(reason), List.of(stage));
    }

    static Stage stage(Instant from, Stage.Step step, Priority priority) {
        return new Stage(from, step, priority, Audience.STYLIST);
    }
}
