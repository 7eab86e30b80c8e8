package rinsebell.web.form;

import java.util.List;

/**
 * What was typed for something that is not a fact of the floor.
 *
 * @param entry what it means; a stand-in where anything is wrong
 * @param errors all that is wrong with it
 */
public record Checked<T>(T entry, List<FieldError> errors) {
    public Checked {
        errors = List.copyOf(errors);
    }
}
