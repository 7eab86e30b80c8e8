@NullMarked
package rinsebell.app.listen;

import org.jspecify.annotations.NullMarked;
