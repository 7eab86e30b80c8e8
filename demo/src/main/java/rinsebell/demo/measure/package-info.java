/**
 * Measurements that are started by hand. Each sets its figure against a yardstick of the same run, because a figure of
 * one machine says little on another.
 */
@NullMarked
package rinsebell.demo.measure;

import org.jspecify.annotations.NullMarked;
