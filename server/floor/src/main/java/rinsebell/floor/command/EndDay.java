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
import rinsebell.floor.report.Measured;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.StayEvent;

/**
 * Ends the salon days before a date: forgotten visits of those days with nothing on are closed; others stay, and ring.
 * Whoever came on that date or later is none of them, however late it is told. What those days have shown of how long things
 * take is learned.
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
        var over = floor.visits().stream()
                .filter(visit -> floor.salon().dayOf(visit.stay().arrivedAt()).isBefore(before))
                .filter(visit -> visit.onHair().isEmpty())
                .toList();
        var times = Measured.of(floor, over);
        if (!times.isEmpty()) {
            drafts.add(new Draft(Stream.SALON, asked.now(), new SalonEvent.TimesLearned(times)));
        }
        drafts.add(new Draft(Stream.day(floor.salon().dayOf(asked.now())), asked.now(), new DayEvent.DayEnded()));
        return new Decision.Accepted(drafts, java.util.List.of());
    }
}
