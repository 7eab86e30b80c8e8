/** Checks simulated Saturdays by what happened on them. */
@NullMarked
package rinsebell.demo.basins;

import org.jspecify.annotations.NullMarked;
