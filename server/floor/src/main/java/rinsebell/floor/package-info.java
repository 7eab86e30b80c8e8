@NullMarked
package rinsebell.floor;

import org.jspecify.annotations.NullMarked;
