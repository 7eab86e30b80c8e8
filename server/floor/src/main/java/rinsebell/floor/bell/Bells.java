package rinsebell.floor.bell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rinsebell.floor.Floor;

/** Every bell of a floor: computed, never stored. */
public final class Bells {
    private Bells() {}

    /** All bells that ring or will ring on this floor if nobody acts. */
    public static List<Bell> of(Floor floor) {
        var seen = floor.acknowledged();
        var heads = Head.all(floor, seen);
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
        return answered(found, floor, seen);
    }

    private static List<Bell> answered(List<Bell> found, Floor floor, Set<Seen> seen) {
        var shelved = floor.shelved();
        var callers = new Callers(floor);
        var house = floor.salon().policy().ringing();
        return found.stream()
                .map(bell -> bell.answered(seen, shelved, house, callers))
                .toList();
    }

    /** When the next of these does something else by itself; empty when none does. */
    public static Optional<Instant> nextAfter(List<Bell> bells, Instant now) {
        return bells.stream().flatMap(bell -> bell.nextAfter(now).stream()).min(Instant::compareTo);
    }
}
