package rinsebell.floor.bell;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.visit.Visit;

/** Basins that cannot take everybody in time. */
final class BasinBells {
    private BasinBells() {}

    static void addTo(List<Bell> found, Floor floor, Function<Visit, HeadTiming> timings) {
        for (var turn : Dispatch.of(floor, timings)) {
            Optional.ofNullable(turn.clashSince())
                    .map(since -> bell(turn, since))
                    .ifPresent(found::add);
        }
    }

    private static Bell bell(Turn turn, Instant since) {
        var visit = turn.visit();
        var stage = new Stage(since, Stage.Step.DUE, Priority.MEDIUM, Audience.DESK);
        var key = new BellKey(BellKind.BASINS_CLASH, visit.value(), turn.anchor());
        return Bell.alone(key, visit, List.of(), List.of(stage));
    }
}
