/**
 * Simulated salon Saturdays, and what becomes of them when heads go to the basins by one way or another. All that chance
 * decides comes from a seed; time is virtual.
 */
@NullMarked
package rinsebell.demo.basins;

import org.jspecify.annotations.NullMarked;
