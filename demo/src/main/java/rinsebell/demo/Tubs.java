package rinsebell.demo;

import java.math.BigDecimal;
import java.util.Optional;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Tub;
import rinsebell.floor.unit.Grams;

/** What the invented products hold and cost, in no particular money. Every figure is made up. */
final class Tubs {
    private Tubs() {}

    /** Empty for the one kind of which this salon has not typed a price in yet. */
    static Optional<Tub> of(Kind kind) {
        return switch (kind) {
            case POWDER_LIGHTENER -> tub(450, "27.00");
            case MILD_CREAM_LIGHTENER, STRONG_CREAM_LIGHTENER -> tub(500, "31.50");
            case HIGH_LIFT_COLOUR, PERMANENT_COLOUR -> tub(60, "7.20");
            case DEPOSIT_COLOUR -> tub(60, "8.40");
            case COLOUR_REMOVER -> tub(200, "18.00");
            case CLEAR_ADDITIVE -> Optional.empty();
            case DEVELOPER -> tub(1000, "9.00");
        };
    }

    private static Optional<Tub> tub(long grams, String price) {
        return Optional.of(new Tub(Grams.of(grams), new BigDecimal(price)));
    }
}
