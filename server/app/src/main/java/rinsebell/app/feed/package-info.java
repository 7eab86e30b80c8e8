/** The live feed: what changed on the floor, sent to every screen that shows it. */
@NullMarked
package rinsebell.app.feed;

import org.jspecify.annotations.NullMarked;
