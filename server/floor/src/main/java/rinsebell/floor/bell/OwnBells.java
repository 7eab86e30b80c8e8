package rinsebell.floor.bell;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.visit.Visit;

/**
 * What one head rings for by itself, before anything that people did about it is told.
 *
 * @param grounds all that it was reckoned from
 * @param head with its instants
 * @param looks that fall due at it: whoever has several heads takes them in rounds
 * @param bells all others
 */
record OwnBells(Grounds grounds, Head head, List<CheckBells.Look> looks, List<Bell> bells) {
    /**
     * Where two of these are equal, so is what the head rings for.
     *
     * @param visits this one, and the same client's others of the day
     * @param bowls what is and was on them, as far as it was written down
     * @param seen what somebody has acknowledged of bells about this head as a whole
     */
    record Grounds(Salon salon, List<Visit> visits, List<Bowl> bowls, Set<Seen> seen) {
        static Grounds of(Floor floor, List<Visit> visits, Set<Seen> seen) {
            var bowls = new ArrayList<Bowl>();
            visits.forEach(visit -> visit.applications()
                    .forEach(application -> floor.bowl(application.bowl()).ifPresent(bowls::add)));
            return new Grounds(floor.salon(), visits, bowls, seen);
        }
    }

    static OwnBells of(Floor floor, Grounds grounds) {
        var head = new Head(floor, grounds.visits().get(0), grounds.seen());
        var bells = new ArrayList<Bell>();
        HeadBells.addTo(bells, head, floor);
        RinseBells.addTo(bells, head);
        DiscomfortBells.addTo(bells, head);
        ForbiddenBells.addTo(bells, head, floor);
        return new OwnBells(grounds, head, CheckBells.looks(head), bells);
    }
}
