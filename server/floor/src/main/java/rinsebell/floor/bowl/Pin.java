package rinsebell.floor.bowl;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.VisitId;

/**
 * What somebody decided about a head's next turn at a basin.
 *
 * @param basin at which, from 1; null for any
 * @param before the head that it goes before; null for none
 * @param since when that was decided
 */
public record Pin(@Nullable Integer basin, @Nullable VisitId before, Instant since) {
    /** At which basin; empty for any. */
    public Optional<Integer> at() {
        return Optional.ofNullable(basin);
    }

    public boolean isBefore(VisitId other) {
        return other.equals(before);
    }
}
