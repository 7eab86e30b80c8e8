package rinsebell.floor.product;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * The times a leaflet gives; each may be absent.
 *
 * @param active usable for, from mixing
 * @param develops from - to
 * @param longestOn the leaflet's maximum on the hair, from the section's first first-on since its last rinse; always a
 *     hard limit
 */
public record Times(
        @Nullable Active active,
        @Nullable Develops develops,
        @Nullable Duration longestOn) {
    public static final Times NONE = new Times(null, null, null);
}
