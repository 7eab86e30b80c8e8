package rinsebell.floor.unit;

import java.math.BigDecimal;

/**
 * A weight in grams, exact and not negative. Equal weights are equal whatever their trailing zeros.
 *
 * @param amount grams; zero or more
 */
public record Grams(BigDecimal amount) implements Comparable<Grams> {
    public static final Grams NONE = new Grams(BigDecimal.ZERO);

    public Grams {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("a weight is not negative: " + amount);
        }
        amount = Decimals.plain(amount);
    }

    public static Grams of(String amount) {
        return new Grams(new BigDecimal(amount));
    }

    public static Grams of(long amount) {
        return new Grams(BigDecimal.valueOf(amount));
    }

    public Grams plus(Grams other) {
        return new Grams(amount.add(other.amount));
    }

    @Override
    public int compareTo(Grams other) {
        return amount.compareTo(other.amount);
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " g";
    }
}
