package rinsebell.floor.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.visit.Situation;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;

/**
 * Reports what happens to a client: one event, or several of the same instant.
 *
 * @param visit whose
 * @param events in their order; never empty
 * @param text an erasable text that goes with the last of them; null for none
 */
public record Report(
        VisitId visit, List<VisitEvent> events, @Nullable String text) implements Command {
    public Report {
        events = List.copyOf(events);
        if (events.isEmpty()) {
            throw new IllegalArgumentException("a report says something");
        }
    }

    public static Report of(VisitId visit, VisitEvent... events) {
        return new Report(visit, List.of(events), null);
    }

    public Report with(@Nullable String note) {
        return new Report(visit, events, note);
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(floor.visit(visit), head -> decide(floor, head, asked));
    }

    private Decision decide(Floor floor, Visit head, Asked asked) {
        var verdict = new Verdict(asked).whileHere(head);
        var situation = new Situation(floor, head, asked.happened());
        for (var event : events) {
            verdict.objections(event.objections(situation))
                    .restrictions(event.restrictions(situation))
                    .between(event.notBefore(situation));
        }
        return verdict.decide(() -> drafts(asked));
    }

    private List<Draft> drafts(Asked asked) {
        var drafts = new ArrayList<Draft>();
        for (var event : events) {
            var last = drafts.size() == events.size() - 1;
            drafts.add(new Draft(Stream.visit(visit), asked.happened(), event, last ? text : null));
        }
        return drafts;
    }
}
