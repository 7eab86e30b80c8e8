/** What time it is in the salon: the one clock, what it counts on, and what it leaves for the next start. */
@NullMarked
package rinsebell.app.time;

import org.jspecify.annotations.NullMarked;
