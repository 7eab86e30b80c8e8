package rinsebell.floor.rule;

import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Zone;

/**
 * What a head may have while this is on it: the strictest of everything on the hair.
 *
 * @param known whether every recipe on it is known; while one is not, nothing may be planned
 * @param anotherRound whether lightener on it is another round today, which stays off the scalp whatever its directions
 *     allow
 * @param limits where it may go by its directions, and what may lie over it or warm it
 */
public record WhileOn(boolean known, boolean anotherRound, Limits limits) {

    /** Whether none of it may touch the scalp. */
    public boolean offScalpOnly() {
        return anotherRound || limits.zone() == Zone.OFF_SCALP;
    }
}
