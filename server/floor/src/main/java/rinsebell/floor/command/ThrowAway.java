package rinsebell.floor.command;

import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.DayEvent;

/** Throws a bowl, or what is left in it, away. What is on a head stays there. */
public record ThrowAway(BowlId bowl) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(
                floor.bowl(bowl),
                known -> new Verdict(asked)
                        .unless(!known.isThrownAway(), ReasonCode.BOWL_GONE)
                        .between(known.mixedAt())
                        .decide(() -> List.of(new Draft(
                                Stream.day(floor.salon().dayOf(asked.now())),
                                asked.happened(),
                                new DayEvent.ThrownAway(bowl)))));
    }
}
