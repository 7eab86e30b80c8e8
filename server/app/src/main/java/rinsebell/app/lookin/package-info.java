/** Links by which a phone or a calendar looks in: it reads when chairs come free, and nothing else. */
@NullMarked
package rinsebell.app.lookin;

import org.jspecify.annotations.NullMarked;
