package rinsebell.web;

import java.util.Locale;
import java.util.Optional;
import rinsebell.floor.salon.Place;

/** How choices and places are written in addresses, forms and JSON: small letters and dashes. */
public final class Codes {
    private Codes() {}

    /** Such as {@code no-reaction}. */
    public static String of(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The choice with this code; its name in code is as good. */
    public static <E extends Enum<E>> Optional<E> choice(Class<E> type, String typed) {
        var code = typed.toLowerCase(Locale.ROOT).replace('_', '-');
        for (var constant : type.getEnumConstants()) {
            if (of(constant).equals(code)) {
                return Optional.of(constant);
            }
        }
        return Optional.empty();
    }

    /** Such as {@code chair-3}, {@code basin-A}, {@code bench}. */
    public static String of(Place place) {
        if (place instanceof Place.Chair chair) {
            return "chair-" + chair.number();
        }
        return place instanceof Place.Basin basin ? "basin-" + basin.letter() : "bench";
    }
}
