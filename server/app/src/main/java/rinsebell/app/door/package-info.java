/** What every request passes before any route sees it, and how the house says no. */
@NullMarked
package rinsebell.app.door;

import org.jspecify.annotations.NullMarked;
