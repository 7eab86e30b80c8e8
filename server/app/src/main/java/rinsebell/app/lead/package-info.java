/** What a day came to, for the colour lead. */
@NullMarked
package rinsebell.app.lead;

import org.jspecify.annotations.NullMarked;
