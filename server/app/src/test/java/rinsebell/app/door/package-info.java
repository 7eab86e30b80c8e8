@NullMarked
package rinsebell.app.door;

import org.jspecify.annotations.NullMarked;
