package rinsebell.floor.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.stream.Stream;

/**
 * An exact quotient of two whole numbers, in lowest terms: a third of a bowl has no decimal that ends.
 *
 * @param over the numerator, which has the sign
 * @param under the denominator, more than zero
 */
public record Fraction(BigInteger over, BigInteger under) implements Comparable<Fraction> {
    public static final Fraction ZERO = new Fraction(BigInteger.ZERO, BigInteger.ONE);
    public static final Fraction ONE = new Fraction(BigInteger.ONE, BigInteger.ONE);

    public Fraction {
        if (under.signum() == 0) {
            throw new ArithmeticException("nothing is divided by nothing: " + over + "/0");
        }
        if (!under.equals(BigInteger.ONE)) {
            var common = over.gcd(under).multiply(BigInteger.valueOf(under.signum()));
            over = over.divide(common);
            under = under.divide(common);
        }
    }

    public static Fraction of(BigDecimal number) {
        return number.scale() <= 0
                ? new Fraction(number.toBigIntegerExact(), BigInteger.ONE)
                : new Fraction(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
    }

    public static Fraction of(long number) {
        return new Fraction(BigInteger.valueOf(number), BigInteger.ONE);
    }

    public Fraction plus(Fraction other) {
        return new Fraction(over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
    }

    /** Of all of them; zero of none. */
    public static Fraction sum(Stream<Fraction> all) {
        return all.reduce(ZERO, Fraction::plus);
    }

    public Fraction minus(Fraction other) {
        return plus(new Fraction(other.over.negate(), other.under));
    }

    public Fraction times(Fraction other) {
        return new Fraction(over.multiply(other.over), under.multiply(other.under));
    }

    /** @throws ArithmeticException when the other is zero */
    public Fraction dividedBy(Fraction other) {
        return new Fraction(over.multiply(other.under), under.multiply(other.over));
    }

    public Fraction abs() {
        return new Fraction(over.abs(), under);
    }

    public int signum() {
        return over.signum();
    }

    /** The greatest whole number that is not greater. */
    public BigInteger floor() {
        var parts = over.divideAndRemainder(under);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    public boolean isWhole() {
        return under.equals(BigInteger.ONE);
    }

    /** As a decimal, for people to read: to so many places, halves away from zero. */
    public BigDecimal rounded(int places) {
        return new BigDecimal(over).divide(new BigDecimal(under), places, RoundingMode.HALF_UP);
    }

    /** As people write it: rounded to at most so many decimal places, without zeros at its end. */
    public String plain(int places) {
        return rounded(places).stripTrailingZeros().toPlainString();
    }

    @Override
    public int compareTo(Fraction other) {
        return over.multiply(other.under).compareTo(other.over.multiply(under));
    }

    @Override
    public String toString() {
        return isWhole() ? over.toString() : over + "/" + under;
    }
}
