package rinsebell.floor.command;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;

/**
 * Somebody puts a bell off for a few minutes; it returns by itself. A high one can't be put off: what it asks for is done
 * now, and "seen" is all that can be said to it. Looks that are one round are put off together.
 *
 * @param bell which
 * @param span for how long
 * @param why why
 * @param note more on why, in free text; null for none
 */
public record Shelve(
        BellKey bell,
        Duration span,
        BellShelved.Why why,
        @Nullable String note) implements Command {
    @Override
    public Decision decide(Floor floor, Asked asked) {
        var early = AskedBell.tooEarly(bell, floor, asked);
        if (early.isPresent()) {
            return Decision.refused(early.get());
        }
        var round = AskedBell.of(bell, floor, asked.seenAt());
        var reasons = Stream.of(
                        Reason.unless(rings(round, asked), ReasonCode.BELL_NOT_RINGING),
                        Reason.unless(round.stream().noneMatch(one -> isHigh(one, asked)), ReasonCode.BELL_TOO_HIGH),
                        Reason.unless(span.compareTo(longest(floor)) <= 0, ReasonCode.SHELVED_TOO_LONG, longest(floor)))
                .flatMap(List::stream)
                .toList();
        return reasons.isEmpty() ? shelved(round, floor, asked) : new Decision.Refused(reasons);
    }

    private static boolean rings(List<Bell> round, Asked asked) {
        return !round.isEmpty() && priority(round.get(0), asked) != Priority.SILENT;
    }

    private static boolean isHigh(Bell one, Asked asked) {
        return priority(one, asked) == Priority.HIGH;
    }

    private static Priority priority(Bell one, Asked asked) {
        return one.at(asked.seenAt()).map(Stage::priority).orElse(Priority.SILENT);
    }

    private static Duration longest(Floor floor) {
        return floor.salon().policy().ringing().longestShelved();
    }

    private Decision shelved(List<Bell> round, Floor floor, Asked asked) {
        return new Decision.Accepted(
                round.stream()
                        .map(one -> new Draft(
                                AskedBell.stream(one, floor, asked.now()),
                                asked.seenAt(),
                                new BellShelved(one.key(), span, why),
                                note))
                        .toList(),
                List.of());
    }
}
