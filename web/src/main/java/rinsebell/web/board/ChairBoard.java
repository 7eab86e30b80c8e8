package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.ChairPanel;
import rinsebell.web.view.Fragment;

/** One client's screen, wherever they are. */
public final class ChairBoard {
    private final HeadTelling head;
    private final HeadPresses presses;

    public ChairBoard(Moment moment, Visit visit) {
        this.head = new HeadTelling(moment, visit, false);
        this.presses = new HeadPresses(head, new BasinRows(moment));
    }

    public List<Fragment> fragments() {
        var all = new ArrayList<Fragment>();
        all.add(strip());
        all.add(panel());
        return all;
    }

    public BellStrip strip() {
        return head.bells.strip(head.moment.bells());
    }

    public ChairPanel panel() {
        var moment = head.moment;
        var aid = new FirstAidTelling(head);
        return new ChairPanel(
                "visit-" + head.visit.id().value(),
                moment.placeSign(head.visit.place()),
                moment.label(head.visit),
                moment.staff(head.visit),
                head.state(),
                mind(),
                head.due(),
                head.ribbon().whole(),
                new HeadLines(head).all(),
                new HeadRules(head).rules(),
                aid.firstAid(),
                presses.all(),
                HeadPresses.discomfort(head));
    }

    /** What to have in mind whatever is done next, until the client leaves. */
    private List<String> mind() {
        var moment = head.moment;
        var all = new ArrayList<String>();
        if (new Restrictions(moment.floor(), head.visit).restsAt(moment.now())) {
            all.add(moment.say("mind.rests"));
        }
        all.addAll(new GateTelling(moment, head.visit).all());
        return all;
    }
}
