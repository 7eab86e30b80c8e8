package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.visit.VisitId;

/**
 * How long what a bell rang for stood, whether somebody had seen it or not.
 *
 * @param bell which
 * @param visit whose head; null when it was about no head
 * @param since its first ring
 * @param gone when it was over; null while it stands
 */
public record Standing(
        BellKey bell,
        @Nullable VisitId visit,
        Instant since,
        @Nullable Instant gone) {

    static Standing since(Instant at, Bell bell) {
        return new Standing(bell.key(), bell.visit(), at, null);
    }

    /** For how long, at an instant. */
    public Duration at(Instant now) {
        return Duration.between(since, Objects.requireNonNullElse(gone, now));
    }

    Standing goesOn() {
        return gone == null ? this : new Standing(bell, visit, since, null);
    }

    Standing goneAt(Instant at) {
        return gone == null ? new Standing(bell, visit, since, at) : this;
    }

    Standing moved(Duration by) {
        return new Standing(bell, visit, since.plus(by), gone == null ? null : gone.plus(by));
    }
}
