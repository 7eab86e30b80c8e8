/** The places, the people and the house policy. */
@NullMarked
package rinsebell.floor.salon;

import org.jspecify.annotations.NullMarked;
