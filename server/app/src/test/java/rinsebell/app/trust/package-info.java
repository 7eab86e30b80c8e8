@NullMarked
package rinsebell.app.trust;

import org.jspecify.annotations.NullMarked;
