package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.salon.Place;
import rinsebell.web.view.Answer;

/** Words a reason, once for pages, programs and speech. */
public final class ReasonTelling {
    private ReasonTelling() {}

    /** What the rule says, and why, in a sentence or two. */
    public static String say(Reason reason, Moment moment) {
        var why = key(reason.code()) + ".why";
        return moment.words().knows(why)
                ? rule(reason, moment) + " " + moment.say(why, arguments(reason, moment))
                : rule(reason, moment);
    }

    /** What the rule says, without why. */
    static String rule(Reason reason, Moment moment) {
        return moment.say(key(reason.code()), arguments(reason, moment));
    }

    private static Object[] arguments(Reason reason, Moment moment) {
        return reason.args().stream()
                .map(argument -> argument(argument, moment))
                .toArray();
    }

    /** The same with where it comes from, as an answer shows it. */
    public static Answer.Reason told(Reason reason, Moment moment) {
        return told(say(reason, moment), reason.code().basis().name(), moment);
    }

    /**
     * A reason that is in words already.
     *
     * @param basis the name of where it comes from
     */
    public static Answer.Reason told(String text, String basis, Moment moment) {
        return new Answer.Reason(text, "", moment.say("basis." + basis.toLowerCase(Locale.ROOT)));
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
