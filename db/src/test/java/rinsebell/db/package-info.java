@NullMarked
package rinsebell.db;

import org.jspecify.annotations.NullMarked;
