package rinsebell.web.form;

import java.util.Locale;
import rinsebell.web.Words;

/** Words for what is wrong with one field. */
public record FaultWords(Words words) {
    /** One sentence that says what is wrong and what to do. */
    public String say(FieldError error) {
        return words.say(
                key(error.code()), error.args().stream().map(this::told).toArray());
    }

    private Object told(Object arg) {
        return arg instanceof FieldError inner ? say(inner) : arg;
    }

    static String key(Fault fault) {
        return "fault." + fault.name().toLowerCase(Locale.ROOT);
    }
}
