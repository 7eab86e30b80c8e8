package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Axis;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Due;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.HeadCard;
import rinsebell.web.view.HeadList;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Weight;
import rinsebell.web.view.Urgency;

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
        var cards = new ArrayList<HeadCard>();
        for (var turn : Dispatch.of(moment.floor())) {
            var weight = cards.isEmpty() ? Weight.MAIN : Weight.PLAIN;
            moment.floor().visit(turn.visit()).ifPresent(visit -> cards.add(card(turn, visit, weight)));
        }
        return new HeadList("basin-next", moment.say("basins.next"), cards, moment.say("basins.none"));
    }

    private HeadCard card(Turn turn, Visit visit, Weight weight) {
        var head = new HeadTelling(moment, visit, false);
        var basin = new BasinRows(moment).basin(turn).map(Place.Basin::letter).orElse("–");
        var hint = moment.say("press.rinse.by", moment.clock(turn.startBy()));
        var rinse = Press.opens(
                        moment.say("press.rinse"), hint, "/visits/" + visit.id().value() + "/rinse")
                .as(weight);
        return HeadCards.of(head, due(head, turn, basin), new BasinCautions(head).all(), List.of(rinse));
    }

    /** The turn at the basin; a bell that rings for this head comes before it. */
    private Due due(HeadTelling head, Turn turn, String basin) {
        var due = head.due();
        if (due.urgency() == Urgency.MEDIUM || due.urgency() == Urgency.HIGH) {
            var what = moment.say("basins.ringing", due.what(), basin);
            return new Due(what, due.at(), due.urgency(), aside(turn), due.alone());
        }
        return new Due(moment.say("basins.to", basin), turn.startBy(), Urgency.CALM, aside(turn), due.alone());
    }

    private String aside(Turn turn) {
        var by = moment.clock(turn.rinseBy());
        return turn.earliest().isBefore(turn.rinseBy()) && turn.earliest().isAfter(turn.knownSince())
                ? moment.say("basins.aside.ready", moment.clock(turn.earliest()), by)
                : moment.say("basins.aside", by);
    }
}
