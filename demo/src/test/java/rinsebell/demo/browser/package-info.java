/** The whole house in a real browser: a wall, a tablet and a phone at once. */
@NullMarked
package rinsebell.demo.browser;

import org.jspecify.annotations.NullMarked;
