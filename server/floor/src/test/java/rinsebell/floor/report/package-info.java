/** What a day came to. */
@NullMarked
package rinsebell.floor.report;

import org.jspecify.annotations.NullMarked;
