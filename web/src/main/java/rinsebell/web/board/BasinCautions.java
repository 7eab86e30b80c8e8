package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.rule.WhileOn;
import rinsebell.floor.visit.ScalpCheck.Finding;

/** What not to do to a head at the basin, and what comes first. */
final class BasinCautions {
    private final HeadTelling head;
    private final Moment moment;

    BasinCautions(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    List<String> all() {
        var all = new ArrayList<String>();
        if (head.visit.severeComplaints().findAny().isPresent()) {
            all.add(moment.say("basins.no_more"));
        }
        if (head.whileOn().filter(WhileOn::offScalpOnly).isPresent()) {
            all.add(moment.say("basins.off_scalp"));
        }
        if (head.visit.onHair().stream()
                .anyMatch(application -> application.area().isFoils())) {
            all.add(moment.say("basins.foils"));
        }
        if (head.visit.heat().isPresent()) {
            all.add(moment.say("basins.heat"));
        }
        head.visit
                .lastScalpCheck()
                .filter(check -> check.finding() != Finding.FINE)
                .ifPresent(check -> all.add(scalp(check.finding())));
        return all;
    }

    private String scalp(Finding finding) {
        var stylist = moment.name(head.visit.stay().stylist());
        return stylist.isEmpty()
                ? moment.say("basins.scalp.nobody", moment.say(finding))
                : moment.say("basins.scalp", moment.say(finding), stylist);
    }
}
