package rinsebell.floor.bell;

import java.util.List;
import java.util.Set;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;

/** Basins that cannot take everybody in time. */
final class BasinBells {
    private BasinBells() {}

    static void addTo(List<Bell> found, Floor floor) {
        Dispatch.of(floor).stream().filter(Turn::isClash).map(BasinBells::bell).forEach(found::add);
    }

    private static Bell bell(Turn turn) {
        var visit = turn.visit();
        var stage = new Stage(turn.knownSince(), Stage.Step.DUE, Priority.MEDIUM, Audience.DESK);
        var key = new BellKey(BellKind.BASINS_CLASH, visit.value(), turn.anchor());
        return new Bell(key, visit, List.of(), Set.of(), List.of(stage));
    }
}
