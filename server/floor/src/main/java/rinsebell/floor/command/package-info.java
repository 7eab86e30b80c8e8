/** What people ask of the floor, and how it decides. */
@NullMarked
package rinsebell.floor.command;

import org.jspecify.annotations.NullMarked;
