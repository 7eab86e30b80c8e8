package rinsebell.floor.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/**
 * The instants of a whole head: what is on it is rinsed together.
 *
 * @param visit whose head
 * @param timings of everything still on the hair, covered bowls too
 */
public record HeadTiming(Visit visit, List<Timing> timings) {
    public HeadTiming {
        timings = List.copyOf(timings);
    }

    public static HeadTiming of(Floor floor, Visit visit) {
        return new HeadTiming(
                visit,
                visit.onHair().stream()
                        .map(application -> Timing.of(floor, visit, application))
                        .toList());
    }

    public boolean isAnythingOn() {
        return !timings.isEmpty();
    }

    /** Every reason for a latest end, the earliest first. */
    public List<Limit> limits() {
        return timings.stream()
                .flatMap(timing -> timing.limits().stream())
                .sorted()
                .toList();
    }

    public Optional<Limit> rinseBy() {
        return limits().stream().findFirst();
    }

    public Optional<Limit> hardLimit() {
        return limits().stream().filter(Limit::hard).findFirst();
    }

    /** Whether discomfort asks for what is on to come off at once. */
    public boolean isOffAtOnce() {
        return limits().stream().anyMatch(limit -> limit.why() == Limit.Why.DISCOMFORT);
    }

    /** The same by the directions and the decisions alone, whatever the client complains of. */
    public HeadTiming apartFromDiscomfort() {
        return new HeadTiming(
                visit, timings.stream().map(Timing::apartFromDiscomfort).toList());
    }

    /** When everything on the head has reached its earliest sensible end; empty while that is not known of all. */
    public Optional<Instant> readyFrom() {
        var live =
                timings.stream().filter(timing -> timing.application().isLive()).toList();
        if (live.isEmpty() || live.stream().anyMatch(timing -> timing.readyFrom() == null)) {
            return Optional.empty();
        }
        return live.stream().map(Timing::ready).flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    /** When somebody wants to look again, and will hardly decide to rinse before; {@link Instant#MIN} for never. */
    public Instant lookAgain() {
        return timings.stream()
                .flatMap(timing -> timing.application().lastCheck().stream())
                .flatMap(check -> check.looksAgainAt().stream())
                .reduce(Instant.MIN, Instants::later);
    }

    /**
     * Whether no instant is late enough for all of it and early enough for all of it. One that is known to be ready too
     * late is enough to say so, whatever is not known of the others.
     */
    public boolean hasNoCommonRinse() {
        return apart().isPresent();
    }

    /**
     * Two that cannot be rinsed together.
     *
     * @param first must come off before the other is ready
     * @param by when
     * @param last of all the one that is ready last
     * @param ready when
     */
    public record Apart(Application first, Instant by, Application last, Instant ready) {}

    /** The two that are farthest apart; empty where some instant suits all, as far as is known. */
    public Optional<Apart> apart() {
        var first =
                timings.stream().filter(timing -> !timing.limits().isEmpty()).min(Comparator.comparing(HeadTiming::by));
        var last = timings.stream()
                .filter(timing -> timing.application().isLive())
                .filter(timing -> timing.ready().isPresent())
                .max(Comparator.comparing(HeadTiming::ready));
        return first.flatMap(one -> last.filter(
                        other -> timings.size() > 1 && ready(other).isAfter(by(one)))
                .map(other -> new Apart(one.application(), by(one), other.application(), ready(other))));
    }

    private static Instant by(Timing timing) {
        return timing.limits().stream()
                .min(Comparator.naturalOrder())
                .orElseThrow()
                .at();
    }

    private static Instant ready(Timing timing) {
        return timing.ready().orElseThrow();
    }

    /** What has to be done before the basin: foils out, and the walk. */
    public Duration workingTime(Policy policy) {
        var foils =
                timings.stream().anyMatch(timing -> timing.application().area().isFoils());
        return policy.working().before(foils);
    }

    /** When work has to begin so that water is on by {@link #rinseBy()}. */
    public Optional<Instant> startBy(Floor floor) {
        return rinseBy().map(limit -> limit.at().minus(workingTime(floor.salon().policy())));
    }

    /** The next look at a strand, of whichever application comes first. */
    public Optional<Looks.Due> nextStrand() {
        return timings.stream()
                .map(timing -> Looks.strand(timing, visit))
                .flatMap(Optional::stream)
                .min(Comparator.comparing(Looks.Due::at));
    }

    public Optional<Looks.Due> nextScalp() {
        return Looks.scalp(timings, visit);
    }
}
