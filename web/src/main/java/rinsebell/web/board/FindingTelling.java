package rinsebell.web.board;

import java.util.ArrayList;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.StrandFinding;

/** Tells what was seen at a look, and what was decided. */
public final class FindingTelling {
    private FindingTelling() {}

    /**
     * Such as "level 8, yellow, look again in 5 min".
     *
     * @param decision null for "by the directions"
     */
    public static String strand(Moment moment, StrandFinding seen, @Nullable CheckDecision decision) {
        var parts = new ArrayList<String>();
        if (seen.level() != null) {
            parts.add(moment.say("finding.level", seen.level()));
        }
        for (var one : new Enum<?>[] {seen.tone(), seen.stretch(), seen.dryness()}) {
            if (one != null) {
                parts.add(moment.say(one));
            }
        }
        decided(moment, decision).forEach(parts::add);
        return parts.isEmpty() ? moment.say("finding.looked") : String.join(", ", parts);
    }

    /** What was decided; empty for "by the directions". */
    public static Stream<String> decided(Moment moment, @Nullable CheckDecision decision) {
        if (decision instanceof CheckDecision.LookAgain again) {
            return Stream.of(moment.say("finding.again", again.after().toMinutes()));
        }
        return decision instanceof CheckDecision.Rinse ? Stream.of(moment.say("finding.rinse")) : Stream.empty();
    }
}
