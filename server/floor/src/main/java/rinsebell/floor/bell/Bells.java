package rinsebell.floor.bell;

import java.util.List;
import rinsebell.floor.Floor;

/** Every bell of a floor: computed, never stored. */
public final class Bells {
    private Bells() {}

    /** All bells that ring or will ring on this floor if nobody acts. */
    public static List<Bell> of(Floor floor) {
        return Peal.of(floor).bells();
    }
}
