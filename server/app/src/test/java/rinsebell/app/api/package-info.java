@NullMarked
package rinsebell.app.api;

import org.jspecify.annotations.NullMarked;
