package rinsebell.floor.bell;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.visit.Visit;

/** Basins that cannot take everybody in time: however many heads want them, that is one thing to hear of. */
final class BasinBells {
    private BasinBells() {}

    static void addTo(List<Bell> found, Floor floor, Function<Visit, HeadTiming> timings) {
        var clashes = Dispatch.of(floor, timings).stream().filter(Turn::isClash).toList();
        clashes.forEach(turn -> found.add(bell(turn, key(clashes.get(0)))));
    }

    private static BellKey key(Turn turn) {
        return new BellKey(BellKind.BASINS_CLASH, turn.visit().value(), turn.anchor());
    }

    private static Bell bell(Turn turn, BellKey round) {
        var since = Objects.requireNonNull(turn.clashSince());
        var stage = new Stage(since, Stage.Step.DUE, Priority.MEDIUM, Audience.DESK);
        return Bell.alone(key(turn), turn.visit(), List.of(), List.of(stage)).inRound(round);
    }
}
