/** Strangers on the network who mean harm, and what a device that is in notices of them. */
@NullMarked
package rinsebell.demo.attack;

import org.jspecify.annotations.NullMarked;
