/** What other devices are shown over HTTPS, and how they come to trust it, without anybody outside the salon. */
@NullMarked
package rinsebell.app.trust;

import org.jspecify.annotations.NullMarked;
