@NullMarked
package rinsebell.web;

import org.jspecify.annotations.NullMarked;
