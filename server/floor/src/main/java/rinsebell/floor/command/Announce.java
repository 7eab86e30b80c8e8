package rinsebell.floor.command;

import java.util.List;
import java.util.Map;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.DayEvent;

/**
 * Tells people the turns at the basins. A plan that was made for an older floor is not told: another one follows.
 *
 * @param floor the number of the newest fact that the plan was made for
 * @param turns by the number of the fact that put the first of each on
 */
public record Announce(long floor, Map<Long, Announced> turns) implements Command {
    public Announce {
        turns = Map.copyOf(turns);
    }

    @Override
    public Decision decide(Floor now, Asked asked) {
        if (now.lastSeq() != floor) {
            return new Decision.Accepted(List.of(), List.of());
        }
        var event = new DayEvent.TurnsAnnounced(floor, turns);
        return Decision.accepted(new Draft(Stream.day(now.salon().dayOf(asked.now())), asked.now(), event));
    }
}
