package rinsebell.floor.bell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Floor;

/** Every bell of a floor: computed, never stored. */
public final class Bells {
    private Bells() {}

    /** All bells that ring or will ring on this floor if nobody acts. */
    public static List<Bell> of(Floor floor) {
        var seen = floor.acknowledged();
        var heads = Head.all(floor);
        var found = new ArrayList<Bell>();
        BowlBells.addTo(found, floor);
        CheckBells.addTo(found, floor, heads);
        heads.forEach(head -> {
            HeadBells.addTo(found, head);
            RinseBells.addTo(found, head);
            DiscomfortBells.addTo(found, head);
            ForbiddenBells.addTo(found, head);
        });
        BasinBells.addTo(found, floor);
        return found.stream().map(bell -> bell.seen(seen)).toList();
    }

    /** When the next stage of any of these begins; empty when none does. */
    public static Optional<Instant> nextAfter(List<Bell> bells, Instant now) {
        return bells.stream().flatMap(bell -> bell.nextAfter(now).stream()).min(Instant::compareTo);
    }
}
