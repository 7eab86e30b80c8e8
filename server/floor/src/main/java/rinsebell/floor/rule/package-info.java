/** What must not be done, and why. */
@NullMarked
package rinsebell.floor.rule;

import org.jspecify.annotations.NullMarked;
