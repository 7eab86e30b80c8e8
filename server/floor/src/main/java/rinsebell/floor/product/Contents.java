package rinsebell.floor.product;

import org.jspecify.annotations.Nullable;
import rinsebell.floor.unit.Percent;

/**
 * What is in the tub. A strength that is not known is null, never zero.
 *
 * @param dye whether it contains dye, so that a skin test is needed
 * @param peroxide hydrogen peroxide, % w/w; zero for none
 * @param ammonia ammonia as NH3, % w/w; zero for none
 */
public record Contents(
        boolean dye, @Nullable Percent peroxide, @Nullable Percent ammonia) {}
