package rinsebell.app.api;

import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.CheckDecision;

/** How what a check decided is written: "rinse", or the minutes after which to look again. */
final class DecisionJson {
    private DecisionJson() {}

    /** Null for "by the directions". */
    static @Nullable String of(@Nullable CheckDecision decision) {
        if (decision instanceof CheckDecision.LookAgain again) {
            return String.valueOf(again.after().toMinutes());
        }
        return decision == null ? null : "rinse";
    }
}
