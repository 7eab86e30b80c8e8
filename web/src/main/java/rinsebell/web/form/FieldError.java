package rinsebell.web.form;

import java.util.List;

/**
 * One thing that is wrong with what was typed.
 *
 * @param field the name of the field
 * @param code what is wrong
 * @param args what its words name, in their order
 */
public record FieldError(String field, Fault code, List<Object> args) {
    public FieldError {
        args = List.copyOf(args);
    }
}
