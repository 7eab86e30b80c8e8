@NullMarked
package rinsebell.app.thread;

import org.jspecify.annotations.NullMarked;
