@NullMarked
package rinsebell.floor.product;

import org.jspecify.annotations.NullMarked;
