package rinsebell.floor.command;

import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/**
 * Something nobody wrote down is already on. The bowl's recipe is not known yet; mixing is taken as ten minutes before
 * the first of it went on. Always a fact.
 *
 * @param visit on whose head
 * @param area where
 * @param zone whether it touches the scalp
 * @param cover what lies over it
 */
public record PutAlready(VisitId visit, Area area, Zone zone, Cover cover) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(
                floor.visit(visit),
                head -> new Verdict(asked).whileHere(head).withinTheDay().decide(() -> drafts(floor, asked)));
    }

    private List<Draft> drafts(Floor floor, Asked asked) {
        var bowl = new BowlId(floor.lastSeq() + 1);
        var mixed = new DayEvent.Mixed(List.of(), BowlReason.FIRST, visit);
        return List.of(
                new Draft(
                        Stream.day(floor.salon().dayOf(asked.now())),
                        asked.happened().minus(Timing.MIXING_ASSUMED),
                        mixed),
                new Draft(Stream.visit(visit), asked.happened(), new WorkEvent.PutOn(bowl, area, zone, cover, null)));
    }
}
