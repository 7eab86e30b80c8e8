package rinsebell.floor.bell;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.visit.VisitId;

/**
 * A bell with everything it will do if nobody acts. It knows no now: {@link #at} asks what it does at an instant.
 *
 * @param key what makes it the same bell
 * @param visit whose head; null when it is about no head
 * @param reasons what it rings for, where that is a restriction: the worst first
 * @param seen what somebody has acknowledged of it
 * @param stages in the order of time; never empty
 */
public record Bell(BellKey key, @Nullable VisitId visit, List<Reason> reasons, Set<Seen> seen, List<Stage> stages) {
    public Bell {
        reasons = reasons.stream().distinct().sorted().toList();
        seen = Set.copyOf(seen);
        stages = stages.stream().distinct().sorted().toList();
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("a bell without a stage never rings: " + key);
        }
    }

    public BellKind kind() {
        return key.kind();
    }

    /** The stage it is in; empty before its first. */
    public Optional<Stage> at(Instant now) {
        return stages.stream().filter(stage -> !stage.from().isAfter(now)).reduce((first, second) -> second);
    }

    /** Whether somebody acknowledged the stage it is in, for all its reasons. A further one has to be seen again. */
    public boolean isSeen(Instant now) {
        return at(now).filter(stage -> seen.stream().anyMatch(one -> one.covers(stage)))
                .filter(stage -> reasons.stream().allMatch(reason -> isSeen(stage, reason.code())))
                .isPresent();
    }

    private boolean isSeen(Stage stage, ReasonCode reason) {
        return seen.stream().anyMatch(one -> one.covers(stage, reason));
    }

    /** This bell and another of the same key are one: it rings for the reasons and in the stages of both. */
    Bell and(Bell other) {
        return new Bell(key, visit, joined(reasons, other.reasons), seen, joined(stages, other.stages));
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    Bell seen(Collection<Seen> all) {
        var ofThis = all.stream().filter(one -> one.what().bell().equals(key)).collect(Collectors.toUnmodifiableSet());
        return ofThis.isEmpty() ? this : new Bell(key, visit, reasons, ofThis, stages);
    }

    /** When its next stage begins; empty after its last. */
    public Optional<Instant> nextAfter(Instant now) {
        return stages.stream()
                .map(Stage::from)
                .filter(from -> from.isAfter(now))
                .findFirst();
    }

    /** When it became due: the beginning of the first stage that rings at all, or of its first. */
    public Instant since() {
        return stages.stream()
                .filter(stage -> stage.priority() != Priority.SILENT)
                .findFirst()
                .orElse(stages.get(0))
                .from();
    }
}
