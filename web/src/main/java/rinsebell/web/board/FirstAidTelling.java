package rinsebell.web.board;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.BellKind;
import rinsebell.web.view.FirstAid;

/** What to do first, while burning, swelling, severe itch or a hot foil still rings. */
final class FirstAidTelling {
    private final HeadTelling head;

    FirstAidTelling(HeadTelling head) {
        this.head = head;
    }

    @Nullable
    FirstAid firstAid() {
        var moment = head.moment;
        return moment.ringing(head.visit).stream()
                .filter(bell -> bell.kind() == BellKind.BURNING || bell.kind() == BellKind.HOT_FOIL)
                .findFirst()
                .map(bell -> new FirstAid(
                        moment.say("aid.title", moment.clock(bell.since())),
                        List.of(moment.say("aid.off"), moment.say("aid.look"), moment.say("aid.no_more")),
                        moment.say("aid.call")))
                .orElse(null);
    }
}
