package rinsebell.floor.testing;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Area;

/**
 * Where a bowl goes, and what lies over it.
 *
 * @param planned the time the stylist plans; null for none
 */
public record Where(
        Area area, Zone zone, Cover cover, @Nullable Duration planned) {
    public static Where onScalp(Area area) {
        return new Where(area, Zone.ON_SCALP, Cover.OPEN, null);
    }

    public static Where offScalp(Area area) {
        return new Where(area, Zone.OFF_SCALP, Cover.OPEN, null);
    }

    public Where under(Cover over) {
        return new Where(area, zone, over, planned);
    }

    public Where planned(Duration time) {
        return new Where(area, zone, cover, time);
    }
}
