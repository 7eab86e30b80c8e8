@NullMarked
package rinsebell.floor.turnaround;

import org.jspecify.annotations.NullMarked;
