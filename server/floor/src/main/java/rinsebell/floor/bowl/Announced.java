package rinsebell.floor.bowl;

import java.time.Duration;
import java.time.Instant;

/**
 * A turn at a basin that people were told.
 *
 * @param basin number, from 1
 * @param water when water was to be on
 */
public record Announced(int basin, Instant water) {
    /** A turn that moves by less is told as before. */
    public static final Duration MOVED = Duration.ofMinutes(1);

    /** Whether people would have to be told again: it is at another basin, or a minute or more sooner or later. */
    public boolean isMoved(Announced next) {
        return basin != next.basin || Duration.between(water, next.water).abs().compareTo(MOVED) >= 0;
    }
}
