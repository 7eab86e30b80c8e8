package rinsebell.floor.unit;

import java.math.BigDecimal;

final class Decimals {
    private Decimals() {}

    /** The same number without trailing zeros and without an exponent, so that equal numbers are equal records. */
    static BigDecimal plain(BigDecimal number) {
        var stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
