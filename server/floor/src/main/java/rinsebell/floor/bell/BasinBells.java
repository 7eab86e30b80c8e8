package rinsebell.floor.bell;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Clashes;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.visit.Visit;

/** Basins that cannot take everybody in time. */
final class BasinBells {
    private BasinBells() {}

    /** One round: whoever is told of one clash is told of all, in the order of their rinse-by. */
    static void addTo(List<Bell> found, Floor floor, Function<Visit, HeadTiming> timings) {
        var bells = Clashes.of(floor, timings).stream()
                .sorted(Comparator.comparing(
                                (Clashes.Clash clash) -> clash.job().latest())
                        .thenComparing(clash -> clash.job().anchor()))
                .map(BasinBells::bell)
                .toList();
        bells.forEach(bell -> found.add(bell.inRound(bells.get(0).key())));
    }

    private static Bell bell(Clashes.Clash clash) {
        var visit = clash.job().visit();
        var stage = new Stage(clash.since(), Stage.Step.DUE, Priority.MEDIUM, Audience.DESK);
        var key = new BellKey(BellKind.BASINS_CLASH, visit.value(), clash.job().anchor());
        return Bell.alone(key, visit, List.of(), List.of(stage));
    }
}
