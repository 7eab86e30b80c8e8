package rinsebell.floor.visit;

import java.time.Instant;

/**
 * Whether the hair is light enough after a round.
 *
 * @param seq the number of its fact
 * @param reached whether it is
 * @param at when it was judged
 */
public record Lift(long seq, boolean reached, Instant at) {}
