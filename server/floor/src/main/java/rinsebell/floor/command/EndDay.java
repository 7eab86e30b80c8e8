package rinsebell.floor.command;

import java.time.LocalDate;
import java.util.ArrayList;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.StayEvent;

/**
 * Ends the salon days before a date: forgotten visits of those days with nothing on are closed; others stay, and ring.
 * Whoever came on that date or later is none of them, however late it is told.
 *
 * @param before the salon's date that has begun
 */
public record EndDay(LocalDate before) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        var drafts = new ArrayList<Draft>();
        for (var visit : floor.openVisits()) {
            var came = floor.salon().dayOf(visit.stay().arrivedAt());
            if (visit.onHair().isEmpty() && came.isBefore(before)) {
                drafts.add(new Draft(Stream.visit(visit.id()), asked.now(), new StayEvent.Left()));
            }
        }
        drafts.add(new Draft(Stream.day(floor.salon().dayOf(asked.now())), asked.now(), new DayEvent.DayEnded()));
        return new Decision.Accepted(drafts, java.util.List.of());
    }
}
