package rinsebell.floor.salon;

import java.time.DayOfWeek;
import java.time.LocalTime;

/**
 * Hours of a weekday in which somebody is at the basins.
 *
 * @param day which
 * @param from by the salon's clock: reached counts
 * @param until after {@code from}, on the same day
 */
public record Shift(DayOfWeek day, LocalTime from, LocalTime until) implements Comparable<Shift> {
    public Shift {
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("no such hours: " + from + " to " + until);
        }
    }

    @Override
    public int compareTo(Shift other) {
        var byDay = day.compareTo(other.day);
        var byBegin = from.compareTo(other.from);
        return byDay != 0 ? byDay : byBegin != 0 ? byBegin : until.compareTo(other.until);
    }
}
