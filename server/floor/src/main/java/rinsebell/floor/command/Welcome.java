package rinsebell.floor.command;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.Service;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Situation;
import rinsebell.floor.visit.Stay;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/**
 * Welcomes a client.
 *
 * @param arrival where, and with whom
 * @param label how the floor calls them; initials are enough
 * @param answers what is already known at the gate
 * @param services what they came for; none where nobody said
 */
public record Welcome(StayEvent.Arrived arrival, String label, Gate answers, List<Service> services)
        implements Command {
    /**
     * So many are here at most: what each press makes the plan of basins reckon grows with the square of it. Common
     * practice, no source: the largest colour rooms hold less than half of them.
     */
    public static final int MOST_HERE = 100;

    public Welcome {
        services = List.copyOf(services);
    }

    /** Somebody of whom nobody has said yet what they came for. */
    public Welcome(StayEvent.Arrived arrival, String label, Gate answers) {
        this(arrival, label, answers, List.of());
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        var id = new VisitId(floor.lastSeq() + 1);
        return new Verdict(asked)
                .unless(floor.salon().isSetUp(), ReasonCode.SALON_NOT_SET_UP)
                .unless(floor.openVisits().size() < MOST_HERE, ReasonCode.FLOOR_FULL, MOST_HERE)
                .objections(new StayEvent.Moved(arrival.place()).objections(situation(floor, id, asked)))
                .objections(new StayEvent.HandedOver(arrival.stylist(), arrival.helper())
                        .objections(situation(floor, id, asked)))
                .withinTheDay()
                .decide(() -> drafts(id, asked));
    }

    private List<Draft> drafts(VisitId id, Asked asked) {
        var drafts = new ArrayList<Draft>();
        drafts.add(new Draft(Stream.visit(id), asked.happened(), arrival, label));
        if (!answers.equals(Gate.UNANSWERED)) {
            drafts.add(new Draft(Stream.visit(id), asked.happened(), new StayEvent.GateAnswered(answers)));
        }
        if (!services.isEmpty()) {
            drafts.add(new Draft(Stream.visit(id), asked.happened(), new StayEvent.ServicesListed(services)));
        }
        return drafts;
    }

    private Situation situation(Floor floor, VisitId id, Asked asked) {
        var at = asked.happened();
        var stay = new Stay(new TextId(id.value()), null, arrival.place(), at, null, null, null, at, null);
        return new Situation(floor, Visit.beginning(id, stay), at);
    }
}
