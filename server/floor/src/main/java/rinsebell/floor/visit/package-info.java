/** One client from arrival to leaving, and what is on the head. */
@NullMarked
package rinsebell.floor.visit;

import org.jspecify.annotations.NullMarked;
