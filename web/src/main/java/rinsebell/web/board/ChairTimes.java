package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rinsebell.floor.turnaround.Range;

/** How times at which somebody is likely done are written: nobody is told a time to the minute. */
public final class ChairTimes {
    private static final long STEP = Duration.ofMinutes(5).toSeconds();

    /** As a field for a clock time takes it, in every salon. HTML Standard, 2.3.5.3 "Times". */
    private static final DateTimeFormatter TYPED = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ChairTimes() {}

    /** The next whole five minutes; so a board is not sent again each second while a head is overdue. */
    static Instant rounded(Instant at) {
        return Instant.ofEpochSecond((at.getEpochSecond() + STEP - 1) / STEP * STEP);
    }

    static String clock(Moment moment, Instant at) {
        return moment.clock(rounded(at));
    }

    /** Such as "16:25 to 16:45". */
    public static String span(Moment moment, Range range) {
        var likely = clock(moment, range.likely());
        var latest = clock(moment, range.latest());
        return likely.equals(latest) ? likely : moment.say("desk.span", likely, latest);
    }

    /** The same instant as somebody types it. */
    public static String typed(Moment moment, Instant at) {
        return TYPED.format(LocalTime.ofInstant(rounded(at), moment.time().zone()));
    }
}
