/** Basins planned by a solver, which starts from the dispatch rule's plan. */
@NullMarked
package rinsebell.planner;

import org.jspecify.annotations.NullMarked;
