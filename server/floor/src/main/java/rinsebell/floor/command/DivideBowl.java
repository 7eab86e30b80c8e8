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
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.VisitId;

/**
 * Divides a bowl before a brush touches it: two bowls, one mixing time.
 *
 * @param bowl which
 * @param reason why the new one
 * @param forVisit whom the new one is for; null for nobody yet
 */
public record DivideBowl(
        BowlId bowl, BowlReason reason, @Nullable VisitId forVisit) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(
                floor.bowl(bowl),
                known -> new Verdict(asked)
                        .unless(!known.isThrownAway(), ReasonCode.BOWL_GONE)
                        .unless(!floor.isTouched(bowl), ReasonCode.BOWL_IN_USE)
                        .unless(forVisit == null || floor.visit(forVisit).isPresent(), ReasonCode.NOT_KNOWN)
                        .between(known.mixedAt())
                        .decide(() -> List.of(new Draft(
                                Stream.day(floor.salon().dayOf(asked.now())),
                                asked.happened(),
                                new DayEvent.Divided(bowl, reason, forVisit)))));
    }
}
