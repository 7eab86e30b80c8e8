/** What programs read: one record for each thing, in plain JSON. The floor's own records are never sent. */
@NullMarked
package rinsebell.app.api;

import org.jspecify.annotations.NullMarked;
