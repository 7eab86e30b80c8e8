/** What a day came to. */
@NullMarked
package rinsebell.app.lead;

import org.jspecify.annotations.NullMarked;
