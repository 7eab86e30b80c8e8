@NullMarked
package rinsebell.app.desk;

import org.jspecify.annotations.NullMarked;
