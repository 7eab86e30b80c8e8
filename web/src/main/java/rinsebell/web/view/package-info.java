/** What a screen shows, as plain display values: worded, placed and ready to print, and equal while nothing changed. */
@NullMarked
package rinsebell.web.view;

import org.jspecify.annotations.NullMarked;
