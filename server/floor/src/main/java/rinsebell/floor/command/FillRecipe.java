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

/**
 * Says what is in a bowl that is already mixed. That is a fact whatever the mixture, and rings if it must.
 *
 * @param bowl which
 * @param weighed what is in it; never empty
 */
public record FillRecipe(BowlId bowl, List<Weighed> weighed) implements Command {
    public FillRecipe {
        weighed = List.copyOf(weighed);
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        var portions = Weighed.portions(weighed, floor.salon());
        return Verdict.orNotKnown(
                floor.bowl(bowl),
                known -> new Verdict(asked)
                        .unless(!portions.isEmpty(), ReasonCode.BOWL_EMPTY)
                        .unless(portions.size() == weighed.size(), ReasonCode.NOT_KNOWN)
                        .between(known.mixedAt())
                        .decide(() -> List.of(new Draft(
                                Stream.day(floor.salon().dayOf(asked.now())),
                                asked.happened(),
                                new DayEvent.RecipeFilled(bowl, portions)))));
    }
}
