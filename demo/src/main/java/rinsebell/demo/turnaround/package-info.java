/**
 * Simulated salons in which nothing takes as long as the house numbers say, and whether chairs come free as was promised.
 * What happens is pressed on the floor, and heads go to the basins by its plan. All that chance decides comes from a seed;
 * time is virtual.
 */
@NullMarked
package rinsebell.demo.turnaround;

import org.jspecify.annotations.NullMarked;
