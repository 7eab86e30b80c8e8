@NullMarked
package rinsebell.app.http;

import org.jspecify.annotations.NullMarked;
