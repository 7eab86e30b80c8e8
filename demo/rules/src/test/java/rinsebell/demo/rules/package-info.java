/** Rules of the house that the compiler does not keep. */
@NullMarked
package rinsebell.demo.rules;

import org.jspecify.annotations.NullMarked;
