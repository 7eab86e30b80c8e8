/** What a day came to: how it rang, how late rinses were. Nothing here is asked by the live floor. */
@NullMarked
package rinsebell.floor.report;

import org.jspecify.annotations.NullMarked;
