/** The single writer of the floor: presses are decided in turn, made durable together, and only then shown. */
@NullMarked
package rinsebell.app.desk;

import org.jspecify.annotations.NullMarked;
