/**
 * The colour floor as a fold of facts.
 *
 * <p>Only instants are stored; every clock is computed from them and a {@code now} that is handed in. Nothing in this
 * module does I/O, starts a thread or reads a clock.
 */
@NullMarked
package rinsebell.floor;

import org.jspecify.annotations.NullMarked;
