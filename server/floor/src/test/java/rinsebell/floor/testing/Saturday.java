package rinsebell.floor.testing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** The day on which tests happen: a Saturday without a change of the clocks. */
public final class Saturday {
    public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    public static final LocalDate DATE = LocalDate.of(2026, 5, 16);
    public static final Instant TEN = at("10:00");

    private Saturday() {}

    /**
     * A local time of that day.
     *
     * @param clock such as "10:00", "10:00:30" or "10:00:30.001"
     */
    public static Instant at(String clock) {
        return on(DATE, clock);
    }

    /** A local time of another day; within the hour that a change of the clocks repeats, the earlier one. */
    public static Instant on(LocalDate date, String clock) {
        return date.atTime(LocalTime.parse(clock)).atZone(ZONE).toInstant();
    }

    public static Duration minutes(long minutes) {
        return Duration.ofMinutes(minutes);
    }
}
