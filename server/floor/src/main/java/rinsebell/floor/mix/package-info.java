/** The arithmetic of the bench: from a ratio to grams on the scale. Exact; only {@link Rounding} rounds. */
@NullMarked
package rinsebell.floor.mix;

import org.jspecify.annotations.NullMarked;
