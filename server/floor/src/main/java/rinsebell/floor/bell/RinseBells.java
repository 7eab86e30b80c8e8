package rinsebell.floor.bell;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.unit.Durations;

/**
 * The rinse of a head: one bell. It is shown before, rings when the work before the basin begins, rings at rinse-by, and
 * a minute past a hard limit rings for everyone. While discomfort rings for the same, unseen, it rings instead.
 */
final class RinseBells {
    private static final Duration PAST = Duration.ofMinutes(1);
    /** The warning before a rinse takes at most this part of the whole time on, so that short ones are not all warning. */
    private static final int PART_OF_WHOLE = 4;

    private RinseBells() {}

    static void addTo(List<Bell> found, Head head) {
        var limits = head.clocks().limits();
        if (limits.isEmpty() || head.isBurning()) {
            return;
        }
        var first = head.timing().timings().stream()
                .map(Timing::application)
                .min((one, other) -> one.firstOn().compareTo(other.firstOn()))
                .orElseThrow();
        var anchor = first.id().value();
        found.add(head.bell(BellKind.RINSE, head.subject(), anchor, stages(head, first.firstOn(), limits.get(0))));
    }

    private static List<Stage> stages(Head head, Instant firstOn, Limit rinseBy) {
        var stages = new ArrayList<Stage>();
        var whole = Duration.between(firstOn, rinseBy.at());
        // Facts are told to the millisecond, and somebody may answer at the very instant.
        var most = whole.isNegative()
                ? Duration.ZERO
                : whole.dividedBy(PART_OF_WHOLE).truncatedTo(ChronoUnit.MILLIS);
        var start = rinseBy.at().minus(Durations.shorter(head.timing().workingTime(head.policy()), most));
        var soon = start.minus(Durations.shorter(head.policy().working().soon(), most));
        stages.add(stage(soon, Stage.Step.SOON, Priority.SILENT, Audience.BASINS));
        stages.add(stage(start, Stage.Step.START, Priority.MEDIUM, Audience.BASINS));
        stages.add(
                stage(rinseBy.at(), Stage.Step.DUE, rinseBy.hard() ? Priority.HIGH : Priority.MEDIUM, Audience.BASINS));
        hard(head).ifPresent(limit -> {
            stages.add(stage(limit.at(), Stage.Step.DUE, Priority.HIGH, Audience.BASINS));
            stages.add(stage(limit.at().plus(PAST), Stage.Step.PAST, Priority.HIGH, Audience.EVERYONE));
        });
        return stages;
    }

    private static Optional<Limit> hard(Head head) {
        return head.clocks().hardLimit();
    }

    private static Stage stage(Instant from, Stage.Step step, Priority priority, Audience audience) {
        return new Stage(from, step, priority, audience);
    }
}
