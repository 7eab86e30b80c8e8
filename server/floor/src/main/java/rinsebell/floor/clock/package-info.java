/** Instants computed from facts and directions: ready from, rinse by, next check. */
@NullMarked
package rinsebell.floor.clock;

import org.jspecify.annotations.NullMarked;
