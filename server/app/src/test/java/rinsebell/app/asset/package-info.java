@NullMarked
package rinsebell.app.asset;

import org.jspecify.annotations.NullMarked;
