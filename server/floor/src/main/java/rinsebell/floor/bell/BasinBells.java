package rinsebell.floor.bell;

import java.util.List;
import java.util.function.Function;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Clashes;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.visit.Visit;

/** Basins that cannot take everybody in time. */
final class BasinBells {
    private BasinBells() {}

    static void addTo(List<Bell> found, Floor floor, Function<Visit, HeadTiming> timings) {
        Clashes.of(floor, timings).stream().map(BasinBells::bell).forEach(found::add);
    }

    private static Bell bell(Clashes.Clash clash) {
        var visit = clash.job().visit();
        var stage = new Stage(clash.since(), Stage.Step.DUE, Priority.MEDIUM, Audience.DESK);
        var key = new BellKey(BellKind.BASINS_CLASH, visit.value(), clash.job().anchor());
        return Bell.alone(key, visit, List.of(), List.of(stage));
    }
}
