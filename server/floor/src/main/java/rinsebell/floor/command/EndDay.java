package rinsebell.floor.command;

import java.util.ArrayList;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.StayEvent;

/** Ends the salon day: forgotten visits with nothing on are closed; others stay, and ring. */
public record EndDay() implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        var drafts = new ArrayList<Draft>();
        for (var visit : floor.openVisits()) {
            if (visit.onHair().isEmpty()) {
                drafts.add(new Draft(Stream.visit(visit.id()), asked.now(), new StayEvent.Left()));
            }
        }
        drafts.add(new Draft(Stream.day(floor.salon().dayOf(asked.now())), asked.now(), new DayEvent.DayEnded()));
        return new Decision.Accepted(drafts, java.util.List.of());
    }
}
