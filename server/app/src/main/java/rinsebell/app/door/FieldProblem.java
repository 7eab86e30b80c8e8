package rinsebell.app.door;

/**
 * What is wrong with one field of a form.
 *
 * @param field its name, as the form or the JSON object has it
 * @param code for scripts, such as {@code too-small}
 * @param detail for people, one sentence
 */
public record FieldProblem(String field, String code, String detail) {}
