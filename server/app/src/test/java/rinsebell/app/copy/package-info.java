@NullMarked
package rinsebell.app.copy;

import org.jspecify.annotations.NullMarked;
