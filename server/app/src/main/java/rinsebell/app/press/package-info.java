/** Presses: from a form or a JSON body to the desk, and the answer back. */
@NullMarked
package rinsebell.app.press;

import org.jspecify.annotations.NullMarked;
