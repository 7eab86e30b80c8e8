package rinsebell.floor.bell;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.clock.Terms;

/** A bowl that was mixed and stands about. */
final class BowlBells {
    private BowlBells() {}

    static void addTo(List<Bell> found, Floor floor) {
        floor.waitingBowls().stream().map(bowl -> waiting(bowl, floor)).forEach(found::add);
    }

    private static Bell waiting(Bowl bowl, Floor floor) {
        var house = floor.salon().policy().bowl();
        var stages = new ArrayList<Stage>();
        stages.add(Head.stage(bowl.mixedAt().plus(house.question()), Stage.Step.SOON, Priority.SILENT));
        stages.add(Head.stage(bowl.mixedAt().plus(house.low()), Stage.Step.DUE, Priority.LOW));
        Terms.of(bowl, floor.salon()).usableUntil(bowl.mixedAt()).ifPresent(end -> {
            // A bowl that is usable for a very short time is past before the house would ask about it.
            stages.removeIf(stage -> !stage.from().isBefore(end));
            stages.add(Head.stage(end, Stage.Step.PAST, Priority.MEDIUM));
        });
        var key =
                new BellKey(BellKind.BOWL_WAITING, bowl.id().value(), bowl.id().value());
        return Bell.alone(key, bowl.forVisit(), List.of(), stages);
    }
}
