@NullMarked
package rinsebell.demo;

import org.jspecify.annotations.NullMarked;
