package rinsebell.floor.bell;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.HeatSpan;

/** Last-on missing, ready, heat and cover at their end, a scalp to look at after the rinse, a round that is
 * over, somebody who left with something on. */
final class HeadBells {
    private static final Duration SCALP_AFTER_RINSE = Duration.ofMinutes(5);

    private HeadBells() {}

    static void addTo(List<Bell> found, Head head, Floor floor) {
        for (var timing : head.timing().timings()) {
            if (timing.application().isLive()) {
                lastOn(head, timing.application()).ifPresent(found::add);
                ready(head, timing).ifPresent(found::add);
                coverEnd(head, timing).ifPresent(found::add);
            }
        }
        head.visit().heat().flatMap(heat -> heatEnd(head, heat)).ifPresent(found::add);
        scalpAfterRinse(head, floor).ifPresent(found::add);
        roundOver(head).ifPresent(found::add);
        leftWithItOn(head).ifPresent(found::add);
    }

    /** Whoever is said to have left with something on either has not left, or must be called back. */
    private static Optional<Bell> leftWithItOn(Head head) {
        return Optional.ofNullable(head.visit().stay().leftAt())
                .map(left -> head.bell(
                        BellKind.LEFT_WITH_IT_ON,
                        head.subject(),
                        head.subject(),
                        List.of(new Stage(left, Stage.Step.DUE, Priority.HIGH, Audience.EVERYONE))));
    }

    private static Optional<Bell> lastOn(Head head, Application application) {
        return application.lastOn() != null
                ? Optional.empty()
                : Optional.of(bell(
                        head,
                        BellKind.LAST_ON_MISSING,
                        application,
                        Head.stage(
                                application.firstOn().plus(head.policy().applying()), Stage.Step.DUE, Priority.LOW)));
    }

    /** Rings for colour and toner; never where rinse-by comes first, and no more once somebody looked. */
    private static Optional<Bell> ready(Head head, Timing timing) {
        return timing.ready()
                .filter(ready -> !timing.terms().hasHardDevelopment() && !timing.isReadyTooLate())
                .filter(ready -> timing.application().checks().stream()
                        .noneMatch(check -> !check.at().isBefore(ready)))
                .map(ready -> bell(
                        head, BellKind.READY, timing.application(), Head.stage(ready, Stage.Step.DUE, Priority.LOW)));
    }

    private static Optional<Bell> coverEnd(Head head, Timing timing) {
        var cover = timing.application().cover();
        return Optional.ofNullable(timing.terms().limits().cover(cover.cover()).upTo())
                .map(longest -> head.bell(
                        BellKind.COVER_END,
                        timing.application().id().value(),
                        cover.seq(),
                        List.of(Head.stage(cover.from().plus(longest), Stage.Step.DUE, Priority.MEDIUM))));
    }

    private static Optional<Bell> heatEnd(Head head, HeatSpan heat) {
        return head.timing().timings().stream()
                .flatMap(timing -> Stream.ofNullable(
                                timing.terms().limits().heat(heat.heat()).upTo())
                        .map(longest -> Instants.later(
                                        heat.from(), timing.application().firstOn())
                                .plus(longest)))
                .min(Comparator.naturalOrder())
                .map(end -> head.bell(
                        BellKind.HEAT_END,
                        head.subject(),
                        heat.seq(),
                        List.of(Head.stage(end, Stage.Step.DUE, Priority.MEDIUM))));
    }

    /** Of the last rinse, but ringing since the first after which nobody looked: a second one must not hush it. */
    private static Optional<Bell> scalpAfterRinse(Head head, Floor floor) {
        var unseen = head.visit().applications().stream()
                .filter(application -> application.isOnScalp() && !application.isOnHair())
                .filter(application ->
                        Timing.of(floor, head.visit(), application).terms().isLightener())
                .flatMap(application -> Stream.ofNullable(application.ending()))
                .filter(ending -> head.visit().scalpChecks().stream()
                        .noneMatch(check -> !check.at().isBefore(ending.at())))
                .sorted(Comparator.comparing(Ending::at))
                .toList();
        return unseen.isEmpty() ? Optional.empty() : Optional.of(scalpAfterRinse(head, unseen));
    }

    private static Bell scalpAfterRinse(Head head, List<Ending> unseen) {
        var since = unseen.get(0).at();
        return head.bell(
                BellKind.SCALP_AFTER_RINSE,
                head.subject(),
                unseen.get(unseen.size() - 1).seq(),
                List.of(
                        Head.stage(since, Stage.Step.DUE, Priority.SILENT),
                        Head.stage(since.plus(SCALP_AFTER_RINSE), Stage.Step.LATE, Priority.LOW)));
    }

    private static Optional<Bell> roundOver(Head head) {
        var round = head.visit().round();
        return Optional.ofNullable(round.lift())
                .filter(lift -> !lift.reached() && round.stoppedAt() == null)
                .map(lift -> head.bell(
                        BellKind.ROUND_OVER,
                        head.subject(),
                        lift.seq(),
                        List.of(Head.stage(lift.at(), Stage.Step.DUE, Priority.LOW))));
    }

    private static Bell bell(Head head, BellKind kind, Application application, Stage stage) {
        var id = application.id().value();
        return head.bell(kind, id, id, List.of(stage));
    }
}
