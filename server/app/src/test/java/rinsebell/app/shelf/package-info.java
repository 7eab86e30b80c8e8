@NullMarked
package rinsebell.app.shelf;

import org.jspecify.annotations.NullMarked;
