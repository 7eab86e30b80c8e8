package rinsebell.web.form;

import java.util.Locale;
import rinsebell.web.Words;

/** Words for what is wrong with one field. */
public record FaultWords(Words words) {
    /** One sentence that says what is wrong and what to do. */
    public String say(FieldError error) {
        return words.say(key(error.code()), error.args().toArray());
    }

    static String key(Fault fault) {
        return "fault." + fault.name().toLowerCase(Locale.ROOT);
    }
}
