/** What was used on a day, and what of it was thrown away. */
@NullMarked
package rinsebell.app.use;

import org.jspecify.annotations.NullMarked;
