package rinsebell.floor.mix;

import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Percent;

/**
 * A strength between two that stand on the shelf, by alligation: the parts of each are as far apart as the wanted strength
 * is from the other. By weight, for strengths in percent w/w.
 */
public sealed interface Blend {

    /**
     * It can be had.
     *
     * @param ofOne which part of the whole is of the first, from 0 to 1; the rest is of the other
     */
    record Mixed(Fraction ofOne) implements Blend {
        public Fraction ofOther() {
            return Fraction.ONE.minus(ofOne);
        }
    }

    /** No mixture of the two is weaker than the one or stronger than the other. */
    record OutOfReach(Percent weakest, Percent strongest) implements Blend {}

    /**
     * @param one a strength, % w/w
     * @param other another, % w/w; zero for a plain carrier
     * @param wanted the strength to be had, % w/w
     */
    static Blend of(Percent one, Percent other, Percent wanted) {
        var weakest = one.compareTo(other) <= 0 ? one : other;
        var strongest = one.compareTo(other) <= 0 ? other : one;
        if (wanted.compareTo(weakest) < 0 || wanted.compareTo(strongest) > 0) {
            return new OutOfReach(weakest, strongest);
        }
        // Of two that are equal any mixture will do: one bottle is enough.
        return one.equals(other)
                ? new Mixed(Fraction.ONE)
                : new Mixed(
                        exact(wanted).minus(exact(other)).dividedBy(exact(one).minus(exact(other))));
    }

    private static Fraction exact(Percent percent) {
        return Fraction.of(percent.value());
    }
}
