/** Words for what is kept about people, and for how long. */
@NullMarked
package rinsebell.web.privacy;

import org.jspecify.annotations.NullMarked;
