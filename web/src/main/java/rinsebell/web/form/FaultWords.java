package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.Locale;
import rinsebell.web.Words;

/** Words for what is wrong with one field. */
public record FaultWords(Words words) {
    /** One sentence that says what is wrong and what to do. */
    public String say(FieldError error) {
        return words.say(
                key(error.code()), error.args().stream().map(this::told).toArray());
    }

    /** A number as it can be typed again: without a sign between its thousands. */
    private Object told(Object arg) {
        if (arg instanceof FieldError inner) {
            return say(inner);
        }
        if (arg instanceof FilePlace place) {
            return place.told(words);
        }
        return arg instanceof BigDecimal number ? number.toPlainString() : arg instanceof Number ? arg.toString() : arg;
    }

    static String key(Fault fault) {
        return "fault." + fault.name().toLowerCase(Locale.ROOT);
    }
}
