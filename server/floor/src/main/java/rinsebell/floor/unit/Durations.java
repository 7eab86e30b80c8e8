package rinsebell.floor.unit;

import java.time.Duration;

/** Which of two durations is over first. */
public final class Durations {
    private Durations() {}

    public static Duration shorter(Duration one, Duration other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
