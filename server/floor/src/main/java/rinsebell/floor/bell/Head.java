package rinsebell.floor.bell;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.visit.Visit;

/** A head that bells may ring for. A closed visit rings nothing. */
record Head(Floor floor, Visit visit, HeadTiming timing) {
    static List<Head> all(Floor floor) {
        return floor.openVisits().stream()
                .map(visit -> new Head(floor, visit, HeadTiming.of(floor, visit)))
                .toList();
    }

    Policy policy() {
        return floor.salon().policy();
    }

    long subject() {
        return visit.id().value();
    }

    Bell bell(BellKind kind, long subject, long anchor, List<Stage> stages) {
        return new Bell(new BellKey(kind, subject, anchor), visit.id(), List.of(), Set.of(), stages);
    }

    Bell bell(BellKind kind, long subject, long anchor, Reason reason, Stage stage) {
        return new Bell(new BellKey(kind, subject, anchor), visit.id(), List.of(reason), Set.of(), List.of(stage));
    }

    static Stage stage(Instant from, Stage.Step step, Priority priority) {
        return new Stage(from, step, priority, Audience.STYLIST);
    }
}
