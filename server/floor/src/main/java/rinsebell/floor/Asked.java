package rinsebell.floor;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;

/**
 * How a press was made.
 *
 * @param now the instant at which it is decided
 * @param typed when it happened, if somebody said so; null for now
 * @param by who pressed; null when nobody was named
 * @param intent plan or fact
 */
public record Asked(
        Instant now, @Nullable Instant typed, @Nullable StaffId by, Intent intent) {
    /** Pressed now, as a plan where the command can be one. */
    public static Asked at(Instant now) {
        return new Asked(now, null, null, Intent.PLAN);
    }

    public Asked by(@Nullable StaffId whom) {
        return new Asked(now, typed, whom, intent);
    }

    public Asked typed(@Nullable Instant when) {
        return new Asked(now, when, by, intent);
    }

    public Asked asFact() {
        return new Asked(now, typed, by, Intent.FACT);
    }

    public Instant happened() {
        return typed == null ? now : typed;
    }
}
