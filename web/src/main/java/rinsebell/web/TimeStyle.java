package rinsebell.web;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How instants and lengths of time are written in this salon: its zone, and a 12- or a 24-hour clock. */
public record TimeStyle(ZoneId zone, boolean twelveHour) {
    private static final DateTimeFormatter TWENTY_FOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
    private static final DateTimeFormatter TWELVE = DateTimeFormatter.ofPattern("h:mm a", Locale.UK);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
    private static final long HOUR_FROM_SECONDS = 100 * 60;

    /** Clock time to the minute, such as {@code 14:22} or {@code 2:22 pm}; seconds are cut off, as a wall clock does. */
    public String clock(Instant instant) {
        return (twelveHour ? TWELVE : TWENTY_FOUR).format(instant.atZone(zone));
    }

    /** The day in the salon's zone, such as {@code 3 Nov}. */
    public String day(Instant instant) {
        return DAY.format(instant.atZone(zone));
    }

    public String day(LocalDate date) {
        return DAY.format(date);
    }

    /**
     * The time left until an instant, or past it with a plus: {@code 07:12}, {@code +01:12}, {@code 2h05}.
     *
     * <p>A started second still counts as left, so the count reaches zero at the instant and not before; from then on
     * it is past. Beyond 99 minutes the seconds are dropped, since minutes and hours would look alike.
     */
    public String left(Instant due, Instant now) {
        var millis = Duration.between(now, due).toMillis();
        return millis > 0 ? count((millis + 999) / 1000) : "+" + count(-millis / 1000);
    }

    private static String count(long seconds) {
        return seconds < HOUR_FROM_SECONDS
                ? "%02d:%02d".formatted(seconds / 60, seconds % 60)
                : "%dh%02d".formatted(seconds / 3600, seconds / 60 % 60);
    }
}
