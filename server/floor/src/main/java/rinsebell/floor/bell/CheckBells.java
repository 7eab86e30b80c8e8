package rinsebell.floor.bell;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Looks;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.unit.Durations;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;

/**
 * Looks at strands and scalps. A due look prompts without a sound; only a late one rings. Looks of one person that fall
 * due shortly after each other are one round and ring with the last of them, unless a hard limit comes first.
 */
final class CheckBells {
    /** A look that is due this shortly before the rinse is not rung: the rinse rings. */
    private static final Duration NEAR_RINSE = Duration.ofMinutes(1);

    private CheckBells() {}

    /** A look with its head; {@code sooner}: it turns high sooner, with heat or on scalp. */
    record Look(Head head, BellKind kind, long subject, Looks.Due due, boolean sooner) {
        @Nullable
        StaffId stylist() {
            return head.visit().stay().stylist();
        }
    }

    /** The looks that fall due at a head. */
    static List<Look> looks(Head head) {
        var looks = new ArrayList<Look>();
        head.timing()
                .timings()
                .forEach(timing -> Looks.strand(timing, head.visit())
                        .ifPresent(due -> looks.add(strand(head, timing.application(), due))));
        head.timing()
                .nextScalp()
                .ifPresent(due -> looks.add(new Look(head, BellKind.SCALP_CHECK, head.subject(), due, true)));
        return looks;
    }

    /** The bells of the looks at all heads. */
    static void addTo(List<Bell> found, Floor floor, List<Look> looks) {
        var byPerson = new HashMap<Optional<StaffId>, List<Look>>();
        looks.forEach(look -> byPerson.computeIfAbsent(Optional.ofNullable(look.stylist()), who -> new ArrayList<>())
                .add(look));
        byPerson.forEach((who, theirs) -> rounds(theirs, who.isPresent(), floor)
                .forEach(round ->
                        round.forEach(look -> found.add(bell(look, last(round)).inRound(key(round.get(0)))))));
    }

    private static Look strand(Head head, Application application, Looks.Due due) {
        var sooner = application.isOnScalp() || head.visit().heat().isPresent();
        return new Look(head, BellKind.STRAND_CHECK, application.id().value(), due, sooner);
    }

    private static List<List<Look>> rounds(List<Look> looks, boolean onePerson, Floor floor) {
        var within = onePerson ? floor.salon().policy().checks().round() : Duration.ZERO;
        var rounds = new ArrayList<List<Look>>();
        var sorted = looks.stream()
                .sorted(Comparator.comparing((Look look) -> look.due().at()).thenComparingLong(Look::subject))
                .toList();
        for (var look : sorted) {
            var open = rounds.isEmpty() ? null : rounds.get(rounds.size() - 1);
            if (open != null && !look.due().at().isAfter(open.get(0).due().at().plus(within))) {
                open.add(look);
            } else {
                rounds.add(new ArrayList<>(List.of(look)));
            }
        }
        return rounds;
    }

    private static Instant last(List<Look> round) {
        return round.get(round.size() - 1).due().at();
    }

    private static BellKey key(Look look) {
        return new BellKey(look.kind(), look.subject(), look.due().anchor());
    }

    private static Bell bell(Look look, Instant roundDue) {
        var stages = new ArrayList<Stage>();
        stages.add(Head.stage(look.due().at(), Stage.Step.DUE, Priority.SILENT));
        if (!rinseRingsInstead(look)) {
            stages.addAll(late(look, roundDue));
        }
        return look.head().bell(look.kind(), look.subject(), look.due().anchor(), stages);
    }

    /** Medium, then high; where the house's numbers have high come first, at once: no look gets quieter. */
    private static List<Stage> late(Look look, Instant roundDue) {
        var house = look.head().policy().checks();
        var high = look.sooner() ? house.highSooner() : house.high();
        var medium = Durations.shorter(house.medium(), high);
        var from = hardLimitBefore(look, roundDue.plus(medium)) ? look.due().at() : roundDue;
        var quietUntil = quietUntil(look.head());
        return List.of(
                Head.stage(Instants.later(from.plus(medium), quietUntil), Stage.Step.LATE, Priority.MEDIUM),
                Head.stage(Instants.later(from.plus(high), quietUntil), Stage.Step.LATE, Priority.HIGH));
    }

    private static boolean rinseRingsInstead(Look look) {
        var rinse = look.head().clocks().rinseBy().map(limit -> limit.at().minus(NEAR_RINSE));
        return look.head().isBurning()
                || rinse.filter(near -> !look.due().at().isBefore(near)).isPresent();
    }

    private static boolean hardLimitBefore(Look look, Instant ringing) {
        return look.head()
                .clocks()
                .hardLimit()
                .map(Limit::at)
                .filter(at -> !at.isAfter(ringing))
                .isPresent();
    }

    /**
     * Nothing rings for whoever is still applying that head, for at most the house's application time: from the first of
     * what is being applied, so that the next part of the head does not keep it quiet for longer.
     */
    private static Instant quietUntil(Head head) {
        return head.timing().timings().stream()
                .map(timing -> timing.application())
                .filter(application -> application.isLive() && application.lastOn() == null)
                .map(application -> application.firstOn().plus(head.policy().applying()))
                .min(Comparator.naturalOrder())
                .orElse(Instant.MIN);
    }
}
