/** What is shown about who may come in: devices, PINs, rights, and the one page that strangers see. */
@NullMarked
package rinsebell.web.access;

import org.jspecify.annotations.NullMarked;
