package rinsebell.floor.command;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Returned;
import rinsebell.floor.bell.Stage;

/**
 * Somebody has seen a bell. Seen is not done: it goes quiet and stays visible, until it comes to a further stage, rings for
 * a further reason, or the house's interval is over. Looks that are one round are seen together.
 *
 * @param bell which
 * @param reason why, in free text; null for none
 */
public record Acknowledge(BellKey bell, @Nullable String reason) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        var early = AskedBell.tooEarly(bell, floor, asked);
        if (early.isPresent()) {
            return Decision.refused(early.get());
        }
        var seenAt = AskedBell.seenAt(bell, floor, asked);
        var round = AskedBell.of(bell, floor, seenAt);
        var drafts = round.isEmpty()
                ? returned(floor, asked)
                : round.stream().flatMap(one -> seen(one, floor, asked, seenAt)).toList();
        return drafts.isEmpty()
                ? Decision.refused(Reason.of(ReasonCode.BELL_NOT_RINGING))
                : new Decision.Accepted(drafts, List.of());
    }

    private Stream<Draft> seen(Bell one, Floor floor, Asked asked, Instant at) {
        return one.at(at).map(stage -> draft(one, stage, floor, asked, at)).stream();
    }

    /** It is gone, and is only listed as not seen. */
    private List<Draft> returned(Floor floor, Asked asked) {
        return Returned.of(floor, asked.now()).stream()
                .filter(one -> one.key().equals(bell))
                .map(one -> draft(one.bell(), one.stage(), floor, asked, asked.seenAt()))
                .toList();
    }

    private Draft draft(Bell one, Stage stage, Floor floor, Asked asked, Instant at) {
        var what = new BellAcknowledged(one.key(), stage.step(), stage.priority(), codes(one), reason != null);
        return new Draft(AskedBell.stream(one, floor, asked.now()), at, what, reason);
    }

    private static Set<ReasonCode> codes(Bell known) {
        return known.reasons().stream().map(Reason::code).collect(Collectors.toUnmodifiableSet());
    }
}
