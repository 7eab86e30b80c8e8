/** Pages: what a browser opens, and the feed that keeps them live. */
@NullMarked
package rinsebell.app.page;

import org.jspecify.annotations.NullMarked;
