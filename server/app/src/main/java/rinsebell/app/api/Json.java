package rinsebell.app.api;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.web.Codes;

/** How values are written: instants by RFC 3339 in UTC, lengths of time in minutes, choices by their codes. */
final class Json {

    private Json() {}

    static String instant(Instant instant) {
        return instant.toString();
    }

    static @Nullable String instantOrNull(@Nullable Instant instant) {
        return instant == null ? null : instant.toString();
    }

    static @Nullable Long minutes(@Nullable Duration duration) {
        return duration == null ? null : duration.toMinutes();
    }

    static @Nullable String code(@Nullable Enum<?> choice) {
        return choice == null ? null : Codes.of(choice);
    }
}
