/** Devices that are there, and whether they can be heard. */
@NullMarked
package rinsebell.app.listen;

import org.jspecify.annotations.NullMarked;
