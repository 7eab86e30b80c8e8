/** Quantities that carry their unit; exact decimals. */
@NullMarked
package rinsebell.floor.unit;

import org.jspecify.annotations.NullMarked;
