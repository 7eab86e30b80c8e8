package rinsebell.floor.simulation;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Command;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Announce;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.KeepRecipes;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.SetFactBack;
import rinsebell.floor.command.Shelve;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.command.WithdrawFact;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.Tub;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Shift;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/** The day around the heads: breaks, basins, the set-up; bells that are seen; what was wrong and is put right. */
final class DeskWork {
    private final Dice dice;

    DeskWork(Dice dice) {
        this.dice = dice;
    }

    Optional<Command> basin(Floor floor) {
        var basin = 1 + dice.below(3);
        return Optional.of(
                new OnDay(dice.onceIn(2) ? new DayEvent.BasinClosed(basin) : new DayEvent.BasinOpened(basin)));
    }

    /** A pin, the end of one, or turns that are told as they are planned, sometimes for an older floor. */
    Optional<Command> turn(Floor floor, Instant now) {
        if (dice.onceIn(3)) {
            var told = floor.outlook(now).plan().turns().stream()
                    .collect(Collectors.toMap(
                            turn -> turn.job().anchor(), turn -> new Announced(turn.basin(), turn.water())));
            return Optional.of(new Announce(floor.lastSeq() - dice.below(2), told));
        }
        return dice.any(floor.visits())
                .map(Visit::id)
                .map(visit -> new OnDay(
                        dice.onceIn(3)
                                ? new DayEvent.TurnUnpinned(visit)
                                : new DayEvent.TurnPinned(
                                        visit,
                                        dice.onceIn(2) ? 1 + dice.below(3) : null,
                                        dice.onceIn(2)
                                                ? dice.any(floor.openVisits())
                                                        .map(Visit::id)
                                                        .orElse(null)
                                                : null)));
    }

    Optional<Command> onBreak(Floor floor) {
        return dice.any(floor.salon().staff())
                .map(StaffMember::id)
                .map(who -> new OnDay(dice.onceIn(2) ? new DayEvent.BreakBegan(who) : new DayEvent.BreakEnded(who)));
    }

    Optional<Command> outage(Floor floor, Instant now) {
        var outage = new DayEvent.Outage(now.minus(dice.within(30)), now);
        return Optional.of(new OnDay(dice.onceIn(2) ? outage : new DayEvent.CaughtUp()));
    }

    Optional<Command> acknowledge(Floor floor, Instant now) {
        var all = floor.bells();
        var ringing = all.stream().filter(bell -> bell.at(now).isPresent()).toList();
        return dice.any(dice.onceIn(6) ? all : ringing)
                .map(Bell::key)
                .map(key -> new Acknowledge(key, dice.onceIn(3) ? "seen to" : null));
    }

    Optional<Command> shelve(Floor floor, Instant now) {
        var all = floor.bells();
        var ringing = all.stream().filter(bell -> bell.isRinging(now)).toList();
        return dice.any(dice.onceIn(6) ? all : ringing)
                .map(bell -> new Shelve(
                        bell.key(), Saturday.minutes(1 + dice.below(6)), dice.of(BellShelved.Why.values()), null));
    }

    Optional<Command> setBack(Floor floor, Instant now) {
        return dice.any(correctable(floor))
                .map(fact -> new SetFactBack(
                        fact.seq(), fact.happened().plus(dice.within(12)).minus(dice.within(20))));
    }

    /** With all that hangs on it, with some of it, or with nothing. */
    Optional<Command> withdraw(Floor floor) {
        return dice.any(correctable(floor)).map(fact -> {
            var others = floor.hangingOn(fact.seq());
            var along = dice.onceIn(3) ? dice.any(others).stream().toList() : List.copyOf(others);
            return new WithdrawFact(fact.seq(), Set.copyOf(along));
        });
    }

    /** The later facts, so that days are not withdrawn from their beginning. */
    private static List<Fact> correctable(Floor floor) {
        var facts = floor.facts();
        return facts.subList(Math.max(0, facts.size() - 40), facts.size());
    }

    /** Of a bowl that lies there, or changed, or no longer wanted. */
    Optional<Command> recipe(Floor floor) {
        var known = dice.any(floor.salon().recipes()).map(KeptRecipe::id);
        if (known.isPresent() && dice.onceIn(3)) {
            return known.map(id -> new Arrange(new SalonEvent.RecipeDropped(id, dice.onceIn(2)), null));
        }
        return dice.any(floor.day().bowls())
                .filter(bowl -> bowl.isRecipeKnown())
                .map(bowl -> new KeepRecipes(List.of(new KeepRecipes.Written(
                        dice.onceIn(2) ? known.orElse(null) : null,
                        dice.onceIn(2) ? new ClientId(1 + dice.below(3)) : null,
                        "a name",
                        bowl.portions().stream()
                                .map(portion -> new Weighed(portion.product(), portion.grams()))
                                .toList()))));
    }

    Optional<Command> arrange(Floor floor) {
        if (dice.onceIn(6)) {
            return recipe(floor);
        }
        if (dice.onceIn(6)) {
            return times(floor).map(change -> new Arrange(change, null));
        }
        var event = switch (dice.below(6)) {
            case 0 -> Optional.<SalonEvent>of(new SalonEvent.PolicySet(policy()));
            case 1 -> Optional.<SalonEvent>of(new SalonEvent.HouseSet(rooms()));
            case 2 -> staff(floor);
            case 3 -> dice.any(floor.salon().products()).map(this::priced);
            default -> dice.any(floor.salon().products()).map(this::revised);
        };
        return event.map(change -> new Arrange(change, "a name"));
    }

    private Optional<SalonEvent> times(Floor floor) {
        if (dice.onceIn(3)) {
            return Optional.of(new SalonEvent.ServiceTimesSet(
                    Map.of(dice.of(Service.values()), Saturday.minutes(1 + dice.below(60)))));
        }
        var from = LocalTime.of(8 + dice.below(6), 0);
        var shift = new Shift(DayOfWeek.SATURDAY, from, from.plusHours(1 + dice.below(9)));
        return dice.any(floor.salon().staff())
                .map(one -> new SalonEvent.ShiftsSet(one.id(), dice.onceIn(4) ? List.of() : List.of(shift)));
    }

    /** Rooms of other sizes; now and then too few for those who sit there. */
    private House rooms() {
        return new House(dice.onceIn(4) ? 2 : 8, 2, 4, Saturday.ZONE, dice.onceIn(2));
    }

    private Optional<SalonEvent> staff(Floor floor) {
        return dice.onceIn(2)
                ? Optional.of(new SalonEvent.StaffEntered(dice.of(Role.values())))
                : dice.any(floor.salon().staff())
                        .map(one -> new SalonEvent.StaffChanged(one.id(), dice.of(Role.values()), dice.onceIn(2)));
    }

    private SalonEvent revised(Product product) {
        if (dice.onceIn(3)) {
            return new SalonEvent.ProductEntered(product.directions());
        }
        return dice.onceIn(2)
                ? new SalonEvent.ProductOffered(product.id(), dice.onceIn(2))
                : new SalonEvent.DirectionsRevised(product.id(), product.directions());
    }

    private SalonEvent priced(Product product) {
        var price = BigDecimal.valueOf(dice.below(5_000), Tub.PLACES);
        return new SalonEvent.TubPriced(product.id(), new Tub(Grams.of(1 + dice.below(1_000)), price));
    }

    private Policy policy() {
        var house = Policy.DEFAULT;
        return new Policy(
                Saturday.minutes(10 + dice.below(20)),
                house.working(),
                house.bowl(),
                house.checks(),
                house.ringing(),
                house.skinTest(),
                house.longestOn(),
                dice.below(3),
                house.keeping());
    }

    /** About what nobody ever heard of. */
    Optional<Command> nonsense(Floor floor) {
        var nowhere = floor.lastSeq() + 1_000;
        return Optional.of(dice.of(List.of(
                new WithdrawFact(nowhere, Set.of()),
                new SetFactBack(nowhere, Saturday.TEN),
                new Acknowledge(new BellKey(BellKind.RINSE, nowhere, nowhere), null),
                Report.of(new VisitId(nowhere), new StayEvent.Left()))));
    }
}
