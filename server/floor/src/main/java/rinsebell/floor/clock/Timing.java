package rinsebell.floor.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/**
 * The instants of one application, computed from the facts and the directions; nothing here knows what time it is.
 *
 * @param application which
 * @param terms the terms of its bowl
 * @param mixedAt when its bowl was mixed; ten minutes before first-on when nobody knows
 * @param readyFrom the earliest sensible end; null while it is not known
 * @param limits every reason for a latest end, the earliest first
 */
public record Timing(
        Application application,
        Terms terms,
        Instant mixedAt,
        @Nullable Instant readyFrom,
        List<Limit> limits) {
    /** For a bowl that nobody wrote down: it was mixed so long before the first of it went on. House rule. */
    public static final Duration MIXING_ASSUMED = Duration.ofMinutes(10);

    public Timing {
        limits = limits.stream().sorted().toList();
    }

    public static Timing of(Floor floor, Visit visit, Application application) {
        return new Reckoning(floor, visit, application).timing();
    }

    /** The latest allowed end; empty where the directions name none. */
    public Optional<Limit> rinseBy() {
        return limits.stream().findFirst();
    }

    /** The earliest hard limit. */
    public Optional<Limit> hardLimit() {
        return limits.stream().filter(Limit::hard).findFirst();
    }

    public Optional<Instant> ready() {
        return Optional.ofNullable(readyFrom);
    }

    /** Rinse-by comes before ready-from: rinse-by wins. */
    public boolean isReadyTooLate() {
        return readyFrom != null
                && rinseBy().filter(limit -> limit.at().isBefore(readyFrom)).isPresent();
    }

    /** The same by the directions and the decisions alone, whatever the client complains of. */
    Timing apartFromDiscomfort() {
        var left = limits.stream()
                .filter(limit -> limit.why() != Limit.Why.DISCOMFORT)
                .toList();
        return new Timing(application, terms, mixedAt, readyFrom, left);
    }

    /** Until when more of the bowl may be put on; what that end means is said with its terms. Empty for no limit. */
    public Optional<Instant> usableUntil() {
        return terms.usableUntil(mixedAt);
    }
}
