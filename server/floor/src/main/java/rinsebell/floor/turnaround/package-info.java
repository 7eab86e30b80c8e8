/** When chairs come free: what is still to be done for each client, and how long that may take. */
@NullMarked
package rinsebell.floor.turnaround;

import org.jspecify.annotations.NullMarked;
