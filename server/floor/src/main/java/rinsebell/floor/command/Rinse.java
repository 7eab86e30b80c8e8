package rinsebell.floor.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Situation;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/**
 * Water is on. That is a fact whatever the basin: one that is not free keeps nobody from writing down a rinse, only the
 * client's place then stays as it was.
 *
 * @param visit whose head
 * @param applications which of them come off; never empty
 * @param basin where; null where nobody said
 * @param text an erasable text; null for none
 */
public record Rinse(
        VisitId visit,
        Set<ApplicationId> applications,
        Place.@Nullable Basin basin,
        @Nullable String text) implements Command {

    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(
                floor.visit(visit), head -> decide(head, new Situation(floor, head, asked.happened()), asked));
    }

    private Decision decide(Visit head, Situation situation, Asked asked) {
        var off = new WorkEvent.TakenOff(applications, Ending.How.RINSED);
        var inTheWay = inTheWay(situation);
        return new Verdict(asked)
                .whileHere(head)
                .objections(off.objections(situation))
                .between(off.notBefore(situation))
                .restrictions(inTheWay)
                .decide(() -> drafts(moves(head) && inTheWay.isEmpty(), off, asked));
    }

    private List<Reason> inTheWay(Situation situation) {
        return basin == null || situation.unlessFree(basin).isEmpty()
                ? List.of()
                : List.of(Reason.of(ReasonCode.BASIN_NOT_FREE, basin));
    }

    private boolean moves(Visit head) {
        return basin != null && !basin.equals(head.place());
    }

    private List<Draft> drafts(boolean moves, WorkEvent.TakenOff off, Asked asked) {
        var drafts = new ArrayList<Draft>();
        if (moves && basin != null) {
            drafts.add(draft(new StayEvent.Moved(basin), null, asked));
        }
        drafts.add(draft(off, text, asked));
        return drafts;
    }

    private Draft draft(VisitEvent event, @Nullable String note, Asked asked) {
        return new Draft(Stream.visit(visit), asked.happened(), event, note);
    }
}
