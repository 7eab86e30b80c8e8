package rinsebell.floor.basin;

import java.time.Instant;

/**
 * A basin that is in order.
 *
 * @param number from 1
 * @param freeFrom when it is empty at the soonest; {@link Instant#MIN} where nobody is at it
 * @param since when the last fact that this depends on happened
 */
public record Basin(int number, Instant freeFrom, Instant since) {}
