package rinsebell.web.form;

import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;

/** What came of reading a form. */
public sealed interface Reading {
    /** It asks this of the floor. */
    record Read(Command command, Asked asked) implements Reading {}

    /**
     * It can't be asked.
     *
     * @param errors all of them; never empty
     */
    record Wrong(List<FieldError> errors) implements Reading {
        public Wrong {
            errors = List.copyOf(errors);
        }
    }
}
