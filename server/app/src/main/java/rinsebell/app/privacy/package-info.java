/** What is about people: erasing it, letting it go when its time is over, giving it to whoever it is about, and telling of it. */
@NullMarked
package rinsebell.app.privacy;

import org.jspecify.annotations.NullMarked;
