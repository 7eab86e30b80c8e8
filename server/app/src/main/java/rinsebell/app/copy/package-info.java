/** Copies of the tables while the server runs. */
@NullMarked
package rinsebell.app.copy;

import org.jspecify.annotations.NullMarked;
