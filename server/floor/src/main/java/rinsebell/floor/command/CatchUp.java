package rinsebell.floor.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;

/**
 * Writes down all at once what happened while no server ran, and that every outage so far is caught up on. It happened,
 * so nothing of it is a plan; if one line of it is impossible, none is written down.
 *
 * @param missed in any order: each is told on the floor that those before it made
 */
public record CatchUp(List<Missed> missed) implements Command {
    public CatchUp {
        missed = List.copyOf(missed);
    }

    /**
     * One thing that happened to a client.
     *
     * @param at when it happened
     */
    public record Missed(VisitId visit, VisitEvent event, Instant at) {}

    @Override
    public Decision decide(Floor floor, Asked asked) {
        var telling = new Telling(floor, asked.asFact());
        missed.stream().sorted(Comparator.comparing(Missed::at)).forEach(telling::tell);
        return telling.decision();
    }

    /** Tells one thing after the other. */
    private static final class Telling {
        private final Asked asked;
        private final List<Draft> drafts = new ArrayList<>();
        private final List<Reason> against = new ArrayList<>();
        private Floor floor;

        Telling(Floor floor, Asked asked) {
            this.floor = floor;
            this.asked = asked;
        }

        void tell(Missed one) {
            var decision = Report.of(one.visit(), one.event()).decide(floor, asked.typed(one.at()));
            if (decision instanceof Decision.Refused refused) {
                against.addAll(refused.reasons());
            } else if (decision instanceof Decision.Accepted accepted) {
                accepted.drafts().forEach(this::add);
            }
        }

        private void add(Draft draft) {
            drafts.add(draft);
            Fact fact = draft.numbered(floor.lastSeq() + 1, asked);
            floor = floor.with(List.of(fact));
        }

        Decision decision() {
            if (!against.isEmpty()) {
                return new Decision.Refused(against.stream().distinct().toList());
            }
            add(new Draft(Stream.day(floor.salon().dayOf(asked.now())), asked.now(), new DayEvent.CaughtUp()));
            return new Decision.Accepted(drafts, List.of());
        }
    }
}
