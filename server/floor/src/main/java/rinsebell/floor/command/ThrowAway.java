package rinsebell.floor.command;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Left;

/**
 * Throws a bowl, or what is left in it, away. What is on a head stays there. Of a bowl that is gone already it only tells
 * what was left.
 *
 * @param left what is left; null when nobody says
 */
public record ThrowAway(BowlId bowl, @Nullable Left left) implements Command {
    public ThrowAway(BowlId bowl) {
        this(bowl, null);
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(
                floor.bowl(bowl),
                known -> new Verdict(asked)
                        .unless(!known.isThrownAway() || left != null, ReasonCode.BOWL_GONE)
                        .between(known.mixedAt())
                        .decide(() -> List.of(new Draft(
                                Stream.day(floor.salon().dayOf(asked.now())), asked.happened(), event(known)))));
    }

    private DayEvent event(Bowl known) {
        return known.isThrownAway() && left != null
                ? new DayEvent.LeftTold(bowl, left)
                : new DayEvent.ThrownAway(bowl, left);
    }
}
