package rinsebell.floor.unit;

import java.time.Instant;

/** Which of two instants comes first. */
public final class Instants {
    private Instants() {}

    public static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    public static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
