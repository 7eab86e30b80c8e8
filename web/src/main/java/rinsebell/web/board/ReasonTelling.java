package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import rinsebell.floor.Reason;
import rinsebell.floor.salon.Place;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/** Words a reason, once for pages, programs and speech. */
public final class ReasonTelling {
    private ReasonTelling() {}

    /** What the reason says, in a sentence. */
    public static String say(Reason reason, Moment moment) {
        var arguments = reason.args().stream()
                .map(argument -> argument(argument, moment))
                .toArray();
        return moment.say("reason." + reason.code().name().toLowerCase(Locale.ROOT), arguments);
    }

    private static Object argument(Object argument, Moment moment) {
        if (argument instanceof Instant instant) {
            return moment.clock(instant);
        }
        if (argument instanceof Duration duration) {
            return duration.toHours() >= 24 ? duration.toHours() : duration.toMinutes();
        }
        if (argument instanceof Place place) {
            return moment.place(place);
        }
        if (argument instanceof Enum<?> value) {
            return moment.say(value);
        }
        return argument instanceof Grams || argument instanceof Percent ? argument.toString() : argument;
    }
}
