package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Axis;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.HeadCard;
import rinsebell.web.view.HeadList;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Weight;

/** The basin screen: who next, when, and what not to do. */
public final class BasinBoard {
    private final Moment moment;

    public BasinBoard(Moment moment) {
        this.moment = moment;
    }

    public List<Fragment> fragments() {
        var all = new ArrayList<Fragment>();
        all.add(strip());
        all.add(axis());
        all.add(next());
        all.addAll(basins());
        return all;
    }

    public BellStrip strip() {
        return new BellTelling(moment, false).strip(moment.bells());
    }

    public Axis axis() {
        return new FloorBoard(moment).axis();
    }

    public List<BasinRow> basins() {
        return new BasinRows(moment).all();
    }

    /** Heads in the order of the dispatch rule. */
    public HeadList next() {
        var cards = Dispatch.of(moment.floor()).stream()
                .flatMap(turn -> moment.floor().visit(turn.visit()).map(visit -> card(turn, visit)).stream())
                .toList();
        return new HeadList("basin-next", moment.say("basins.next"), cards, moment.say("basins.none"));
    }

    private HeadCard card(Turn turn, Visit visit) {
        var head = new HeadTelling(moment, visit, false);
        var hint = moment.say("press.rinse.by", moment.clock(turn.startBy()));
        var rinse = Press.opens(
                        moment.say("press.rinse"), hint, "/visits/" + visit.id().value() + "/rinse")
                .as(Weight.MAIN);
        return HeadCards.of(head, List.of(rinse));
    }
}
