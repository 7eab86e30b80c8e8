package rinsebell.app.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.web.form.Codes;

/** How values are written: instants by RFC 3339 in UTC, lengths of time in minutes, choices by their codes. */
public final class Json {

    /** Leaves out what is not known, rather than saying null. */
    public static final ObjectMapper MAPPER = JsonMapper.builder()
            .serializationInclusion(JsonInclude.Include.NON_NULL)
            .build();

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
