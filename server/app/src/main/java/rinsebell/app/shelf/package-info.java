/** The invented products that the server ships with. */
@NullMarked
package rinsebell.app.shelf;

import org.jspecify.annotations.NullMarked;
