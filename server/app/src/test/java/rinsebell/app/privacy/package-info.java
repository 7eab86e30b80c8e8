@NullMarked
package rinsebell.app.privacy;

import org.jspecify.annotations.NullMarked;
