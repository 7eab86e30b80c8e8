package rinsebell.floor.bell;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Reason;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.visit.VisitId;

/**
 * A bell with everything it will do if nobody acts. It knows no now: {@link #at} asks what it does at an instant.
 *
 * @param key what makes it the same bell
 * @param round the bell with which it is one to a person: looks that are taken in one round; itself where it stands alone
 * @param visit whose head; null when it is about no head
 * @param reasons what it rings for, where that is a restriction: the worst first
 * @param stages in the order of time; never empty
 * @param seen what somebody has acknowledged of it
 * @param shelved when somebody has put it off
 * @param rings what all of that comes to, in the order of time; empty before it is {@link #answered}
 */
public record Bell(
        BellKey key,
        BellKey round,
        @Nullable VisitId visit,
        List<Reason> reasons,
        List<Stage> stages,
        Set<Seen> seen,
        Set<Shelved> shelved,
        List<Ring> rings) {
    public Bell {
        reasons = reasons.stream().distinct().sorted().toList();
        stages = stages.stream().distinct().sorted().toList();
        seen = Set.copyOf(seen);
        shelved = Set.copyOf(shelved);
        rings = List.copyOf(rings);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("a bell without a stage never rings: " + key);
        }
    }

    /** A bell that stands alone, before anything that people did about it is told. */
    public static Bell alone(BellKey key, @Nullable VisitId visit, List<Reason> reasons, List<Stage> stages) {
        return new Bell(key, key, visit, reasons, stages, Set.of(), Set.of(), List.of());
    }

    public BellKind kind() {
        return key.kind();
    }

    /** The stage it is in; empty before its first. */
    public Optional<Stage> at(Instant now) {
        return last(stages, Stage::from, now);
    }

    /** What it does; empty before its first stage. */
    public Optional<Ring> ring(Instant now) {
        return last(rings, Ring::from, now);
    }

    private static <T> Optional<T> last(List<T> inTime, Function<T, Instant> from, Instant now) {
        return inTime.stream().filter(one -> !from.apply(one).isAfter(now)).reduce((first, second) -> second);
    }

    public AlarmState state(Instant now) {
        return ring(now).map(Ring::state).orElse(AlarmState.NORMAL);
    }

    /** Whether it sounds, for whomever. */
    public boolean isRinging(Instant now) {
        return state(now).isRinging();
    }

    /** Whether somebody acknowledged the stage it is in, for all its reasons, and it has not rung again since. */
    public boolean isSeen(Instant now) {
        return state(now) == AlarmState.ACKNOWLEDGED;
    }

    /** Who has put it off, while that lasts. */
    public Optional<Shelved> onShelf(Instant now) {
        return state(now) != AlarmState.SHELVED
                ? Optional.empty()
                : shelved.stream().filter(one -> !one.at().isAfter(now)).max(Comparator.comparing(Shelved::at));
    }

    /** Whether this stage was ever acknowledged, for all its reasons. A further one has to be seen again. */
    boolean isSeenWhole(Stage stage) {
        return seen.stream().anyMatch(one -> one.covers(stage))
                && reasons.stream().allMatch(reason -> seen.stream().anyMatch(one -> one.covers(stage, reason.code())));
    }

    /** This bell and another of the same key are one: it rings for the reasons and in the stages of both. */
    Bell and(Bell other) {
        return alone(key, visit, joined(reasons, other.reasons), joined(stages, other.stages));
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    Bell inRound(BellKey first) {
        return new Bell(key, first, visit, reasons, stages, seen, shelved, rings);
    }

    /** This bell with what people saw of it. */
    Bell seen(Collection<Seen> all) {
        var ofThis = all.stream().filter(one -> one.what().bell().equals(key)).collect(Collectors.toSet());
        return ofThis.isEmpty() ? this : new Bell(key, round, visit, reasons, stages, ofThis, shelved, rings);
    }

    /** This bell with all that people did about it, and what it then does. */
    Bell answered(Set<Seen> seen, Set<Shelved> shelved, Policy.Ringing house, Callers callers) {
        var told = new Bell(key, round, visit, reasons, stages, seen, shelved, List.of());
        return new Bell(key, round, visit, reasons, stages, seen, shelved, RingPlan.of(told, house, callers));
    }

    /** When it does something else by itself; empty when that is never. */
    public Optional<Instant> nextAfter(Instant now) {
        return rings.stream().map(Ring::from).filter(from -> from.isAfter(now)).findFirst();
    }

    /** When it became due: the beginning of the first stage that rings at all, or of its first. */
    public Instant since() {
        return stages.stream()
                .filter(Stage::rings)
                .findFirst()
                .orElse(stages.get(0))
                .from();
    }
}
