package rinsebell.app.press;

import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;

/**
 * What a press is about, from its address.
 *
 * @param resource such as visits
 * @param id the number in the address; 0 where it has none
 * @param press the name of the press; empty where the address has none
 */
record Address(String resource, long id, String press) {
    /** The press of an address that ends in a number. */
    private static final String CHANGE = "change";

    static Address of(String resource, String second, String third) {
        var isNumber = second.matches("\\d{1,18}");
        if (!isNumber && !third.isEmpty()) {
            throw Problem.of(ProblemCode.NOT_FOUND).thrown();
        }
        if (!isNumber) {
            return new Address(resource, 0, second);
        }
        return new Address(resource, Long.parseLong(second), third.isEmpty() ? CHANGE : third);
    }
}
