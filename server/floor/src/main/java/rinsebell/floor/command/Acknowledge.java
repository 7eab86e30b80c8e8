package rinsebell.floor.command;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Bells;
import rinsebell.floor.bell.Stage;

/**
 * Somebody has seen a bell. Seen is not done: it goes quiet and stays visible, until it comes to a further stage or rings for a
 * further reason.
 *
 * @param bell which
 * @param reason why, in free text; null for none
 */
public record Acknowledge(BellKey bell, @Nullable String reason) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        return Bells.of(floor).stream()
                .filter(known -> known.key().equals(bell))
                .flatMap(known -> known.at(asked.now()).stream().map(stage -> seen(known, stage, floor, asked)))
                .findFirst()
                .orElse(Decision.refused(Reason.of(ReasonCode.BELL_NOT_RINGING)));
    }

    private Decision seen(Bell known, Stage stage, Floor floor, Asked asked) {
        var visit = known.visit();
        // A bowl may have been meant for somebody who never came: that is the day's then.
        var stream = visit == null || floor.visit(visit).isEmpty()
                ? Stream.day(floor.salon().dayOf(asked.now()))
                : Stream.visit(visit);
        return new Decision.Accepted(
                List.of(new Draft(
                        stream,
                        asked.now(),
                        new BellAcknowledged(bell, stage.step(), stage.priority(), codes(known)),
                        reason)),
                List.of());
    }

    private static Set<ReasonCode> codes(Bell known) {
        return known.reasons().stream().map(Reason::code).collect(Collectors.toUnmodifiableSet());
    }
}
