@NullMarked
package rinsebell.db.journal;

import org.jspecify.annotations.NullMarked;
