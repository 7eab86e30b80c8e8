package rinsebell.floor.command;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;

/**
 * A person says that the clock is right now, and so that time had passed uncounted while the machine was off. No server ran
 * in it, so whoever was here is to be caught up on as after any outage.
 *
 * @param by how much time
 * @param since what the salon's clock showed when it began to go on without that time
 */
public record MissTime(Duration by, Instant since) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return new Verdict(asked)
                .withinTheDay()
                .decide(() -> events(floor).stream()
                        .map(event -> new Draft(Stream.day(floor.salon().dayOf(asked.now())), asked.happened(), event))
                        .toList());
    }

    private List<DayEvent> events(Floor floor) {
        var events = new ArrayList<DayEvent>(List.of(new DayEvent.TimeMissed(by)));
        var outage = new DayEvent.Outage(since, since.plus(by));
        if (outage.concerns(floor)) {
            events.add(outage);
        }
        return events;
    }
}
