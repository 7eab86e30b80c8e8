package rinsebell.app.press;

import io.javalin.http.Context;
import rinsebell.app.door.Numbered;
import rinsebell.web.form.Presses;

/**
 * What a press is about, from its address.
 *
 * @param resource such as visits
 * @param id the number in the address; 0 where it has none
 * @param press the name of the press; empty where the address has none
 */
record Address(String resource, long id, String press) {
    private static final String ID = "id";

    /** Where a press is sent to, below the prefix of pages or of programs. */
    static String path(Presses.Name name) {
        var base = "/" + name.resource();
        if (name.press().equals(Presses.PLAIN)) {
            return base;
        }
        var about = hasId(name) ? base + "/{" + ID + "}" : base;
        return name.press().equals(Presses.CHANGE) ? about : about + "/" + name.press();
    }

    private static boolean hasId(Presses.Name name) {
        return switch (name.resource()) {
            case "bells", "day" -> false;
            default -> !name.press().equals(Presses.PLAIN);
        };
    }

    /** A number that nothing can have is an address at which nothing lives. */
    static Address of(Presses.Name name, Context ctx) {
        return new Address(name.resource(), hasId(name) ? Numbered.at(ctx, ID) : 0, name.press());
    }
}
