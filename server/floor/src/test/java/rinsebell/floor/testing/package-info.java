/** Words in which tests tell a salon day: an invented house, facts by hand, time by hand. */
@NullMarked
package rinsebell.floor.testing;

import org.jspecify.annotations.NullMarked;
