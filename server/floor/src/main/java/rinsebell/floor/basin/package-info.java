/** Who must be at a basin by when: the dispatch rule. */
@NullMarked
package rinsebell.floor.basin;

import org.jspecify.annotations.NullMarked;
