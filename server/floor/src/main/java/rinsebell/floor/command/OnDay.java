package rinsebell.floor.command;

import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;

/** Says something of the day that is neither on a head nor in a bowl: a break, a basin, an outage, the clock. */
public record OnDay(DayEvent event) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return new Verdict(asked)
                .objections(event.objections(floor))
                .withinTheDay()
                .decide(() ->
                        List.of(new Draft(Stream.day(floor.salon().dayOf(asked.now())), asked.happened(), event)));
    }
}
