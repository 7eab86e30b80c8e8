package rinsebell.app.door;

import io.javalin.http.Context;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The number of a thing in an address. */
public final class Numbered {
    private Numbered() {}

    /**
     * The number at this place of the address.
     *
     * @throws ProblemException not-found where there is none: nothing lives at such an address
     */
    public static long at(Context ctx, String name) {
        return number(ctx.pathParam(name)).orElseThrow(Numbered::nowhere);
    }

    /** A number that a thing could have; empty for any other text. */
    public static Optional<Long> number(@Nullable String text) {
        return text != null && text.matches("[0-9]{1,18}") ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }

    /** Nothing lives at this address. */
    public static ProblemException nowhere() {
        return Problem.of(ProblemCode.NOT_FOUND).thrown();
    }
}
