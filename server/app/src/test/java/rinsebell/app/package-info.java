@NullMarked
package rinsebell.app;

import org.jspecify.annotations.NullMarked;
