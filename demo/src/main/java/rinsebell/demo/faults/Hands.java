package rinsebell.demo.faults;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Command;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.command.SetFactBack;
import rinsebell.floor.command.Shelve;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.command.WithdrawFact;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.WorkEvent;

/** The people of a salon that is busy, and too few of them: what they press, by what their screen shows them. */
final class Hands {
    private static final List<List<Directions>> RECIPES = List.of(
            List.of(InventedProducts.MILD_CREAM, InventedProducts.DEVELOPER_20),
            List.of(InventedProducts.STRONG_CREAM, InventedProducts.DEVELOPER_20),
            List.of(InventedProducts.POWDER, InventedProducts.DEVELOPER_30),
            List.of(InventedProducts.BEIGE, InventedProducts.DEVELOPER_20),
            List.of(InventedProducts.TONER, InventedProducts.DEVELOPER_10));

    /** How often somebody looks about for something to do. */
    private static final int LOOKS = 4;

    private final Dice dice;

    Hands(Dice dice) {
        this.dice = dice;
    }

    /** What somebody presses next; empty when they find nothing to do. */
    Optional<Command> press(Plan shown, long salonMillis) {
        var found = Optional.<Command>empty();
        for (var look = 0; look < LOOKS && found.isEmpty(); look++) {
            found = any(shown, salonMillis);
        }
        return found;
    }

    private Optional<Command> any(Plan shown, long salonMillis) {
        var floor = shown.snapshot().floor();
        return switch (dice.below(24)) {
            case 0, 1, 2 -> welcome(floor, salonMillis);
            case 3, 4 -> mix(floor);
            case 5, 6, 7 -> putOn(floor);
            case 8 -> onOne(floor, one -> new WorkEvent.LastOn(one.id()));
            case 9 ->
                onOne(floor, one -> new LookEvent.StrandChecked(one.id(), StrandFinding.NOTHING_SAID, decision()));
            case 10 ->
                onHead(floor, new LookEvent.ScalpChecked(dice.of(List.of(ScalpCheck.Finding.values())), decision()));
            case 11 ->
                onHead(floor, dice.onceIn(2) ? new WorkEvent.HeatOn(Heat.GENTLE_STEAM) : new WorkEvent.HeatOff());
            case 12 -> rinse(floor);
            case 13 -> dice.onceIn(4) ? complain(floor) : leave(floor);
            case 14 -> shelve(shown, salonMillis);
            case 15 -> corrected(floor);
            case 16 -> aBreak(floor);
            default -> heard(shown, salonMillis);
        };
    }

    private Optional<Command> welcome(Floor floor, long salonMillis) {
        var chair = 1 + dice.below(Opening.CHAIRS);
        if (!floor.at(Place.chair(chair)).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(welcome(floor, chair, floor.salon().dayOf(Instant.ofEpochMilli(salonMillis))));
    }

    Command welcome(Floor floor, int chair, LocalDate today) {
        return new Welcome(new StayEvent.Arrived(Place.chair(chair), stylist(floor), null, null), "AB", fine(today));
    }

    /** Nothing stands in the way of anything. */
    private static Gate fine(LocalDate today) {
        var tested = new Gate.SkinTest(Gate.SkinTest.Result.NO_REACTION, today.minusDays(3));
        return new Gate(tested, Gate.Scalp.FINE, Gate.YesNo.NO, Gate.Metal.NONE, Gate.YesNo.NO);
    }

    private @Nullable StaffId stylist(Floor floor) {
        return dice.any(floor.salon().working().stream()
                        .filter(member -> member.role() == Role.STYLIST)
                        .toList())
                .map(StaffMember::id)
                .orElse(null);
    }

    private Optional<Command> mix(Floor floor) {
        return somebody(floor).map(visit -> mix(floor, visit));
    }

    Command mix(Floor floor, Visit visit) {
        var weighed = dice.of(RECIPES).stream()
                .map(of -> new Weighed(product(floor, of), Grams.of(60)))
                .toList();
        return new Mix(weighed, BowlReason.FIRST, visit.id());
    }

    private static ProductId product(Floor floor, Directions of) {
        return floor.salon().products().stream()
                .filter(product -> product.directions().name().equals(of.name()))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private Optional<Command> putOn(Floor floor) {
        return dice.any(floor.waitingBowls()).flatMap(bowl -> putOn(floor, bowl));
    }

    Optional<Command> putOn(Floor floor, Bowl bowl) {
        return Optional.ofNullable(bowl.forVisit())
                .flatMap(floor::visit)
                .filter(Visit::isOpen)
                .map(visit -> putOn(visit, bowl));
    }

    private Command putOn(Visit visit, Bowl bowl) {
        var area = dice.of(List.of(Area.REGROWTH, Area.LENGTHS, Area.FOILS_ALL));
        var zone = area.equals(Area.REGROWTH) ? Zone.ON_SCALP : Zone.OFF_SCALP;
        return Report.of(visit.id(), new WorkEvent.PutOn(bowl.id(), area, zone, Cover.OPEN, null));
    }

    private Optional<Command> onOne(Floor floor, Function<Application, VisitEvent> event) {
        return dice.any(floor.openVisits().stream()
                        .filter(visit -> !visit.live().isEmpty())
                        .toList())
                .map(visit -> Report.of(visit.id(), event.apply(dice.of(visit.live()))));
    }

    private Optional<Command> onHead(Floor floor, VisitEvent event) {
        return dice.any(floor.openVisits().stream()
                        .filter(visit -> !visit.onHair().isEmpty())
                        .toList())
                .map(visit -> Report.of(visit.id(), event));
    }

    private Optional<Command> complain(Floor floor) {
        return onHead(floor, new LookEvent.Complained(dice.of(List.of(Complaint.Grade.values()))));
    }

    private Optional<Command> leave(Floor floor) {
        return dice.any(floor.openVisits().stream()
                        .filter(visit -> visit.onHair().isEmpty())
                        .toList())
                .map(visit -> Report.of(visit.id(), new StayEvent.Left()));
    }

    private Optional<Command> rinse(Floor floor) {
        return dice.any(floor.openVisits().stream()
                        .filter(visit -> !visit.onHair().isEmpty())
                        .toList())
                .map(visit -> new Rinse(
                        visit.id(),
                        visit.onHair().stream().map(Application::id).collect(Collectors.toUnmodifiableSet()),
                        dice.onceIn(2) ? null : (Place.Basin) Place.basin(1 + dice.below(Opening.BASINS)),
                        null));
    }

    private Optional<Bell> ringing(Plan shown, long salonMillis) {
        return dice.any(shown.bells().stream()
                .filter(bell -> {
                    var ring = Plan.turnAt(bell, salonMillis);
                    return ring != null && ring.isRinging();
                })
                .toList());
    }

    private Optional<Command> heard(Plan shown, long salonMillis) {
        return ringing(shown, salonMillis).map(bell -> new Acknowledge(bell.key(), null));
    }

    private Optional<Command> shelve(Plan shown, long salonMillis) {
        return ringing(shown, salonMillis)
                .map(bell -> new Shelve(
                        bell.key(),
                        Duration.ofMinutes(1 + dice.below(5)),
                        dice.of(List.of(BellShelved.Why.values())),
                        null));
    }

    /** What was pressed wrongly a short while ago. */
    private Optional<Command> corrected(Floor floor) {
        var facts = floor.facts();
        return dice.any(facts.subList(Math.max(0, facts.size() - 12), facts.size()))
                .filter(Fact::canBeCorrected)
                .map(fact -> dice.onceIn(3)
                        ? new WithdrawFact(fact.seq(), Set.copyOf(floor.hangingOn(fact.seq())))
                        : new SetFactBack(fact.seq(), fact.happened().minusMillis(dice.below(600_000))));
    }

    private Optional<Command> aBreak(Floor floor) {
        return dice.any(floor.salon().staff())
                .map(StaffMember::id)
                .map(who -> new OnDay(
                        floor.day().onBreak().contains(who) || dice.onceIn(4)
                                ? new DayEvent.BreakEnded(who)
                                : new DayEvent.BreakBegan(who)));
    }

    private Optional<Visit> somebody(Floor floor) {
        return dice.any(floor.openVisits());
    }

    private @Nullable CheckDecision decision() {
        return switch (dice.below(4)) {
            case 0 -> null;
            case 1 -> CheckDecision.RINSE;
            default -> CheckDecision.lookAgain(Duration.ofMinutes(dice.of(List.of(3L, 5L, 10L))));
        };
    }
}
