@NullMarked
package rinsebell.web.form;

import org.jspecify.annotations.NullMarked;
