/** Holds what was promised of chairs against when they were free. */
@NullMarked
package rinsebell.demo.turnaround;

import org.jspecify.annotations.NullMarked;
