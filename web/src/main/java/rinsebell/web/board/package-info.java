/** What each live screen shows of a floor: boards, made of fragments. */
@NullMarked
package rinsebell.web.board;

import org.jspecify.annotations.NullMarked;
