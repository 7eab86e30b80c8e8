/** Bells: alarms for people, computed from the floor. */
@NullMarked
package rinsebell.floor.bell;

import org.jspecify.annotations.NullMarked;
