/** Random salon days that check the sentences on which the floor rests; a seed tells a day. */
@NullMarked
package rinsebell.floor.simulation;

import org.jspecify.annotations.NullMarked;
