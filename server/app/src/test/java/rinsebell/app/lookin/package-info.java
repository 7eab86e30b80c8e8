/** Links that look in. */
@NullMarked
package rinsebell.app.lookin;

import org.jspecify.annotations.NullMarked;
