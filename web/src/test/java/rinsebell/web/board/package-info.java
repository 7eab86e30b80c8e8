@NullMarked
package rinsebell.web.board;

import org.jspecify.annotations.NullMarked;
