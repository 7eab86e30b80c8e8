@NullMarked
package rinsebell.app.feed;

import org.jspecify.annotations.NullMarked;
