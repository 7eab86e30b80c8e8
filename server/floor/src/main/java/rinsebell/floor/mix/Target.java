package rinsebell.floor.mix;

import rinsebell.floor.unit.Fraction;

/**
 * What one portion should weigh.
 *
 * @param grams exactly, more than nothing
 * @param stands whether that is what it weighs, because somebody said so or it lies in the bowl already
 */
public record Target(Fraction grams, boolean stands) {
    public Target {
        if (grams.signum() <= 0) {
            throw new IllegalArgumentException("a portion weighs something: " + grams);
        }
    }

    static Target of(Fraction grams) {
        return new Target(grams, false);
    }
}
