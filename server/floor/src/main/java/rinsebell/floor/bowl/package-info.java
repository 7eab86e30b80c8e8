/** Portions, recipes, bowls, and the salon's day. */
@NullMarked
package rinsebell.floor.bowl;

import org.jspecify.annotations.NullMarked;
