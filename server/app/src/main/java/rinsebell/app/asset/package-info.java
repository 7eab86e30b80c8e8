/** Style, scripts and fonts, served from memory. */
@NullMarked
package rinsebell.app.asset;

import org.jspecify.annotations.NullMarked;
