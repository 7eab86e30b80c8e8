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

    /** The place with this code, in whatever salon; empty when it is no code of a place. */
    public static Optional<Place> place(String code) {
        if (code.matches("chair-\\d{1,3}")) {
            return Optional.of(Place.chair(Integer.parseInt(code.substring("chair-".length()))));
        }
        if (code.matches("basin-[A-Z]")) {
            return Optional.of(Place.basin(code.charAt(code.length() - 1) - 'A' + 1));
        }
        return code.equals(of(Place.BENCH)) ? Optional.of(Place.BENCH) : Optional.empty();
    }
}
