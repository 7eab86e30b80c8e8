package rinsebell.floor.bell;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Policy;

/** How a bell rings; the three that sound are the priorities of IEC 60601-1-8. */
public enum Priority {
    /** Shown, and no more. */
    SILENT,
    LOW,
    MEDIUM,
    HIGH;

    /** After how long a bell that nobody has seen calls more people; null for never. */
    @Nullable
    Duration wider(Policy.Ringing house) {
        return switch (this) {
            case HIGH -> house.widerHigh();
            case MEDIUM -> house.widerMedium();
            case LOW, SILENT -> null;
        };
    }

    /** After how long a bell that was seen rings again. */
    public Duration again(Policy.Ringing house) {
        return switch (this) {
            case HIGH -> house.againHigh();
            case MEDIUM -> house.againMedium();
            case LOW, SILENT -> house.againLow();
        };
    }
}
