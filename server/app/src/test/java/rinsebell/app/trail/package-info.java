@NullMarked
package rinsebell.app.trail;

import org.jspecify.annotations.NullMarked;
