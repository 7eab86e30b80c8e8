package rinsebell.web.board;

import java.time.Instant;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rinsebell.floor.turnaround.Range;

/** How the times at which somebody is likely done are written. */
public final class SpanTelling {
    /** As a field for a clock time takes it, in every salon. HTML Standard, 2.3.5.3 "Times". */
    private static final DateTimeFormatter TYPED = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private SpanTelling() {}

    static String clock(Moment moment, Instant at) {
        return moment.clock(ChairTime.rounded(at));
    }

    /** Such as "16:25 to 16:45". */
    public static String span(Moment moment, Range range) {
        var likely = clock(moment, range.likely());
        var latest = clock(moment, range.latest());
        return likely.equals(latest) ? likely : moment.say("desk.span", likely, latest);
    }

    /** The same instant as somebody types it. */
    public static String typed(Moment moment, Instant at) {
        return TYPED.format(
                LocalTime.ofInstant(ChairTime.rounded(at), moment.time().zone()));
    }
}
