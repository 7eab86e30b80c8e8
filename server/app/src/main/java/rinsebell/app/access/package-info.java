/** Who may come in and what they may do there: devices by invitation, people by a PIN where something is private. */
@NullMarked
package rinsebell.app.access;

import org.jspecify.annotations.NullMarked;
