package rinsebell.floor.simulation;

import static rinsebell.floor.testing.Scoop.g;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.command.DivideBowl;
import rinsebell.floor.command.FillRecipe;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.ThrowAway;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Product;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.VisitId;

/** What is pressed at the mixing bench. */
final class Bowls {
    private static final List<List<Scoop>> RECIPES = List.of(
            List.of(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)),
            List.of(g(60, Shelf.STRONG_CREAM), g(60, Shelf.DEV20)),
            List.of(g(60, Shelf.POWDER), g(60, Shelf.DEV30)),
            List.of(g(60, Shelf.POWDER), g(7, Shelf.CLEAR), g(45, Shelf.DEV40)),
            List.of(g(60, Shelf.HIGH_LIFT), g(60, Shelf.DEV40), g(7, Shelf.PERMANENT)),
            List.of(g(60, Shelf.PERMANENT), g(60, Shelf.DEV20)),
            List.of(g(60, Shelf.TONER), g(60, Shelf.DEV10)),
            List.of(g(60, Shelf.REMOVER)),
            List.of());

    private static final List<List<Scoop>> WRONG = List.of(
            List.of(g(60, Shelf.POWDER), g(7, Shelf.PERMANENT), g(67, Shelf.DEV30)),
            List.of(g(60, Shelf.MILD_CREAM), g(120, Shelf.DEV20)),
            List.of(g(60, Shelf.TONER), g(60, Shelf.DEV40)),
            List.of(g(30, Shelf.POWDER), g(30, Shelf.STRONG_CREAM), g(60, Shelf.DEV30)),
            List.of(g(60, Shelf.MILD_CREAM), g(50, Shelf.DEV20)),
            List.of(g(60, Shelf.HIGH_LIFT), g(60, Shelf.DEV30), g(9, Shelf.PERMANENT)),
            List.of(g(60, Shelf.HIGH_LIFT)));

    private final Dice dice;

    Bowls(Dice dice) {
        this.dice = dice;
    }

    Optional<Command> mix(Floor floor) {
        return Optional.of(new Mix(weighed(floor), dice.of(BowlReason.values()), somebody(floor)));
    }

    Optional<Command> fill(Floor floor) {
        return dice.any(floor.day().bowls()).map(bowl -> new FillRecipe(bowl.id(), weighed(floor)));
    }

    Optional<Command> divide(Floor floor) {
        return bowl(floor).map(bowl -> new DivideBowl(bowl, dice.of(BowlReason.values()), somebody(floor)));
    }

    Optional<Command> throwAway(Floor floor) {
        return bowl(floor).map(bowl -> new ThrowAway(bowl, left()));
    }

    private @org.jspecify.annotations.Nullable Left left() {
        return switch (dice.below(3)) {
            case 0 -> null;
            case 1 -> new Left.Weighed(Grams.of(dice.below(150)));
            default -> new Left.Estimated(dice.of(Left.Quarters.values()));
        };
    }

    /** Mostly a bowl of the last few, as on a bench. */
    Optional<BowlId> bowl(Floor floor) {
        var ids = floor.day().bowls().stream().map(Bowl::id).toList();
        return dice.any(dice.onceIn(4) ? ids : ids.subList(Math.max(0, ids.size() - 3), ids.size()));
    }

    private @org.jspecify.annotations.Nullable VisitId somebody(Floor floor) {
        return dice.any(floor.openVisits()).map(visit -> visit.id()).orElse(null);
    }

    private List<Weighed> weighed(Floor floor) {
        return dice.of(dice.onceIn(5) ? WRONG : RECIPES).stream()
                .map(scoop -> new Weighed(named(floor, scoop.of().name()).id(), scoop.grams()))
                .toList();
    }

    private static Product named(Floor floor, String name) {
        return floor.salon().products().stream()
                .filter(product -> product.directions().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no product " + name + " among "
                        + Arrays.toString(floor.salon().products().toArray())));
    }
}
