package rinsebell.floor.simulation;

import static rinsebell.floor.testing.Saturday.minutes;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.command.PutAlready;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Place.Basin;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.WorkEvent;

/** What is done to heads, and seen on them. */
final class Heads {
    private final Dice dice;
    private final Clients clients;
    private final Bowls bowls;

    Heads(Dice dice, Clients clients, Bowls bowls) {
        this.dice = dice;
        this.clients = clients;
        this.bowls = bowls;
    }

    Optional<Command> putOn(Floor floor) {
        return bowls.bowl(floor)
                .flatMap(bowl ->
                        report(floor, new WorkEvent.PutOn(bowl, area(), dice.of(Zone.values()), cover(), planned())));
    }

    Optional<Command> already(Floor floor) {
        return clients.somebody(floor)
                .map(visit -> new PutAlready(visit.id(), area(), dice.of(Zone.values()), cover()));
    }

    Optional<Command> lastOn(Floor floor) {
        return onOne(floor, WorkEvent.LastOn::new);
    }

    Optional<Command> cover(Floor floor) {
        return onOne(floor, on -> new WorkEvent.CoverChanged(on, cover()));
    }

    Optional<Command> plan(Floor floor) {
        return onOne(floor, on -> new WorkEvent.Planned(on, planned()));
    }

    Optional<Command> foilsOut(Floor floor) {
        return onOne(floor, WorkEvent.FoilsOut::new);
    }

    Optional<Command> emulsify(Floor floor) {
        return onOne(floor, WorkEvent.Emulsified::new);
    }

    Optional<Command> strand(Floor floor) {
        return onOne(floor, on -> new LookEvent.StrandChecked(on, StrandFinding.NOTHING_SAID, decision()));
    }

    Optional<Command> heatOn(Floor floor) {
        return report(floor, new WorkEvent.HeatOn(dice.of(Heat.values())));
    }

    Optional<Command> heatOff(Floor floor) {
        return report(floor, new WorkEvent.HeatOff());
    }

    Optional<Command> scalp(Floor floor) {
        return report(floor, new LookEvent.ScalpChecked(dice.of(ScalpCheck.Finding.values()), decision()));
    }

    Optional<Command> complain(Floor floor) {
        return report(floor, new LookEvent.Complained(dice.of(Complaint.Grade.values())));
    }

    Optional<Command> towelDry(Floor floor) {
        return report(floor, new WorkEvent.TowelDried());
    }

    Optional<Command> judge(Floor floor) {
        return report(floor, new LookEvent.LiftJudged(dice.onceIn(2)));
    }

    Optional<Command> stop(Floor floor) {
        return report(floor, new LookEvent.RoundsStopped());
    }

    /** All that is on, or some of it. */
    Optional<Command> takeOff(Floor floor) {
        return clients.somebody(floor).flatMap(visit -> {
            var on = visit.onHair().stream().map(Application::id).toList();
            var which = dice.onceIn(3) ? dice.any(on).stream().toList() : on;
            return which.isEmpty() ? Optional.empty() : Optional.of(takenOff(visit, Set.copyOf(which)));
        });
    }

    private Command takenOff(Visit visit, Set<ApplicationId> which) {
        return dice.onceIn(5)
                ? Report.of(visit.id(), new WorkEvent.TakenOff(which, Ending.How.WIPED_OFF))
                : new Rinse(visit.id(), which, basin(), null);
    }

    private @Nullable Basin basin() {
        return dice.onceIn(3) ? null : (Basin) Place.basin(1 + dice.below(2));
    }

    private Optional<Command> report(Floor floor, VisitEvent event) {
        return clients.somebody(floor).map(visit -> Report.of(visit.id(), event));
    }

    /** Mostly on something that is on, now and then on what is long off. */
    private Optional<Command> onOne(Floor floor, Function<ApplicationId, VisitEvent> event) {
        return clients.somebody(floor)
                .flatMap(visit -> dice.any(dice.onceIn(10) ? visit.applications() : visit.live())
                        .map(on -> Report.of(visit.id(), event.apply(on.id()))));
    }

    private Area area() {
        return dice.of(List.of(Area.REGROWTH, Area.LENGTHS, Area.ENDS, Area.FOILS_ALL));
    }

    private Cover cover() {
        return dice.onceIn(2) ? Cover.OPEN : dice.of(Cover.values());
    }

    private @Nullable Duration planned() {
        return dice.onceIn(3) ? minutes(5 + dice.below(50)) : null;
    }

    private @Nullable CheckDecision decision() {
        return switch (dice.below(4)) {
            case 0 -> null;
            case 1 -> CheckDecision.RINSE;
            default -> CheckDecision.lookAgain(minutes(dice.of(3L, 5L, 10L)));
        };
    }
}
