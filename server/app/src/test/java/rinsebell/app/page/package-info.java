@NullMarked
package rinsebell.app.page;

import org.jspecify.annotations.NullMarked;
