/** The threads of the process, whichever way its JDK makes them. */
@NullMarked
package rinsebell.app.thread;

import org.jspecify.annotations.NullMarked;
