@NullMarked
package rinsebell.app.access;

import org.jspecify.annotations.NullMarked;
