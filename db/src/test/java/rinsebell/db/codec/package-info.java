@NullMarked
package rinsebell.db.codec;

import org.jspecify.annotations.NullMarked;
