@NullMarked
package rinsebell.app.time;

import org.jspecify.annotations.NullMarked;
