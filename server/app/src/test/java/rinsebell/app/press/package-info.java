@NullMarked
package rinsebell.app.press;

import org.jspecify.annotations.NullMarked;
