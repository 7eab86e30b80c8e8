package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.salon.Place;

/** Words a reason, once for pages, programs and speech. */
public final class ReasonTelling {
    private ReasonTelling() {}

    /** What the rule says, and why, in a sentence or two. */
    public static String say(Reason reason, Moment moment) {
        var arguments = reason.args().stream()
                .map(argument -> argument(argument, moment))
                .toArray();
        var rule = moment.say(key(reason.code()), arguments);
        var why = key(reason.code()) + ".why";
        return moment.words().knows(why) ? rule + " " + moment.say(why, arguments) : rule;
    }

    /** The bundle key of what the rule says; the same with {@code .why} says why, where that is not plain. */
    public static String key(ReasonCode code) {
        return "reason." + code.name().toLowerCase(Locale.ROOT);
    }

    private static String argument(Object argument, Moment moment) {
        if (argument instanceof Instant instant) {
            return moment.clock(instant);
        }
        if (argument instanceof Place place) {
            return moment.place(place);
        }
        if (argument instanceof Enum<?> value) {
            return moment.say(value);
        }
        return argument instanceof Duration length ? length(length, moment) : argument.toString();
    }

    private static String length(Duration length, Moment moment) {
        var days = length.toDays();
        return days > 0 && length.equals(Duration.ofDays(days))
                ? moment.say("length.days", days)
                : moment.say("length.minutes", length.toMinutes());
    }
}
