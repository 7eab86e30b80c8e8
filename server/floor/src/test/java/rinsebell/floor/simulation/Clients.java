package rinsebell.floor.simulation;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;

/** Who comes, sits, moves and goes. */
final class Clients {
    private static final List<Gate> GATES = List.of(
            Gates.FINE,
            Gates.FINE,
            Gates.FINE,
            Gate.UNANSWERED,
            Gates.fineBut(Gate.SkinTest.NOT_DONE),
            Gates.fineBut(Gates.testedOn(Saturday.DATE.minusDays(1))),
            Gates.fineBut(Gate.Scalp.SORE),
            Gates.fineBut(Gate.Metal.PRESENT),
            Gates.under16(),
            Gates.reactedEarlier(),
            new Gate(null, Gate.Scalp.FINE, null, null, null));

    private final Dice dice;

    Clients(Dice dice) {
        this.dice = dice;
    }

    Optional<Visit> somebody(Floor floor) {
        return dice.any(dice.onceIn(12) ? floor.visits() : floor.openVisits());
    }

    Optional<Command> welcome(Floor floor) {
        var arrival = new StayEvent.Arrived(place(), staff(floor), staff(floor), client());
        return Optional.of(
                new Welcome(arrival, "AB", dice.of(GATES), dice.onceIn(3) ? List.of(Service.BOWL) : List.of()));
    }

    Optional<Command> gate(Floor floor) {
        return report(floor, new StayEvent.GateAnswered(dice.of(GATES)));
    }

    Optional<Command> move(Floor floor) {
        return report(floor, new StayEvent.Moved(place()));
    }

    Optional<Command> handOver(Floor floor) {
        return report(floor, new StayEvent.HandedOver(staff(floor), staff(floor)));
    }

    Optional<Command> services(Floor floor) {
        return switch (dice.below(4)) {
            case 0 -> report(floor, new StayEvent.ServicesListed(List.of(dice.of(Service.values()), Service.TONER)));
            case 1 -> report(floor, new StayEvent.ServiceBegan(Service.CUT));
            case 2 -> report(floor, new StayEvent.EndTold(Duration.ofMinutes(dice.below(120))));
            default -> report(floor, new StayEvent.ServiceEnded(Service.CUT));
        };
    }

    Optional<Command> relabel(Floor floor) {
        return report(floor, new StayEvent.Relabelled());
    }

    Optional<Command> link(Floor floor) {
        return report(floor, new StayEvent.ClientLinked(client()));
    }

    Optional<Command> leave(Floor floor) {
        return report(floor, new StayEvent.Left());
    }

    private Optional<Command> report(Floor floor, StayEvent event) {
        return somebody(floor).map(visit -> Report.of(visit.id(), event));
    }

    /** Now and then one that the house does not have. */
    private Place place() {
        return switch (dice.below(6)) {
            case 0 -> Place.BENCH;
            case 1 -> Place.basin(1 + dice.below(3));
            default -> Place.chair(1 + dice.below(9));
        };
    }

    private @Nullable StaffId staff(Floor floor) {
        return dice.onceIn(6)
                ? null
                : dice.any(floor.salon().staff()).map(StaffMember::id).orElse(null);
    }

    private @Nullable ClientId client() {
        return dice.onceIn(2) ? null : new ClientId(1 + dice.below(4));
    }
}
