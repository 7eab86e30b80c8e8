package rinsebell.floor.command;

import java.time.Instant;
import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Correction;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.visit.Situation;
import rinsebell.floor.visit.VisitEvent;

/**
 * Says that something happened at another time.
 *
 * @param seq the number of its fact
 * @param to when it really happened; between the earliest possible, and now or what came of it
 */
public record SetFactBack(long seq, Instant to) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Verdict.orNotKnown(floor.standing(seq), fact -> decide(floor, fact, asked));
    }

    private Decision decide(Floor floor, Fact fact, Asked asked) {
        var latest = latest(floor, asked);
        return new Verdict(asked.typed(to))
                .unless(fact.canBeCorrected(), ReasonCode.CANNOT_BE_CORRECTED)
                .between(earliest(floor, fact, asked))
                .unless(!to.isAfter(latest), ReasonCode.TOO_LATE, latest)
                .decide(() -> List.of(new Draft(fact.stream(), asked.now(), new Correction.SetBack(seq, to))));
    }

    private Instant earliest(Floor floor, Fact fact, Asked asked) {
        var longestBack = asked.now().minus(Verdict.LONGEST_BACK);
        if (fact.stream() instanceof Stream.OfVisit of
                && of.visit().value() != fact.seq()
                && fact.event() instanceof VisitEvent event) {
            return floor.visit(of.visit())
                    .map(visit -> event.notBefore(new Situation(floor, visit, to)))
                    .orElse(longestBack);
        }
        return fact.event().hangsOn().stream()
                .flatMap(on -> floor.standing(on).stream())
                .map(Fact::happened)
                .max(Instant::compareTo)
                .orElse(longestBack);
    }

    private boolean isOfTheVisitThatThisBegins(Fact fact) {
        return fact.stream() instanceof Stream.OfVisit of && of.visit().value() == seq;
    }

    /** What directly came of it did not happen before it. */
    private Instant latest(Floor floor, Asked asked) {
        return floor.hangingOn(seq).stream()
                .flatMap(on -> floor.standing(on).stream())
                .filter(fact -> fact.event().hangsOn().contains(seq) || isOfTheVisitThatThisBegins(fact))
                .map(Fact::happened)
                .min(Instant::compareTo)
                .orElse(asked.now());
    }
}
