/**
 * Kills the real server in the middle of presses, starts it again on the same folder, and looks whether everything that
 * was answered is still there.
 */
@NullMarked
package rinsebell.demo.kill;

import org.jspecify.annotations.NullMarked;
