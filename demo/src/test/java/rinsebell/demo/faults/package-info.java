/** Some days with faults at each build, and the bugs that they catch. */
@NullMarked
package rinsebell.demo.faults;

import org.jspecify.annotations.NullMarked;
