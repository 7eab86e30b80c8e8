@NullMarked
package rinsebell.demo.kill;

import org.jspecify.annotations.NullMarked;
