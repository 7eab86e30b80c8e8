package rinsebell.web.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bell.BellKind;
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
import rinsebell.web.view.Urgency;

/** The basin screen: who next, when, and what not to do. */
public final class BasinBoard {
    private final Moment moment;
    private final BasinRows rows;
    private final TurnTelling turns;

    public BasinBoard(Moment moment) {
        this.moment = moment;
        this.turns = new TurnTelling(moment);
        this.rows = new BasinRows(moment);
    }

    public List<Fragment> fragments() {
        var all = new ArrayList<Fragment>();
        all.add(strip());
        all.add(axis());
        all.add(turns.troubles());
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
        return rows.all();
    }

    /** Who burns comes first, then what rings; then the turns of the plan, and who has something on at a basin, by the clock. */
    public HeadList next() {
        var ranked = new ArrayList<Ranked>();
        atBasins().forEach(ranked::add);
        for (var turn : turns.next()) {
            moment.floor().visit(turn.visit()).ifPresent(visit -> ranked.add(ranked(visit, card(turn, visit))));
        }
        var cards = new ArrayList<>(ranked.stream().sorted().map(Ranked::card).toList());
        if (!cards.isEmpty()) {
            cards.set(0, cards.get(0).first());
        }
        return new HeadList("basin-next", moment.say("basins.next"), cards, moment.say("basins.none"));
    }

    private record Ranked(boolean burns, HeadCard card) implements Comparable<Ranked> {
        @Override
        public int compareTo(Ranked other) {
            return Comparator.comparing(Ranked::burns)
                    .thenComparing((Ranked one) -> one.card.due().urgency())
                    .reversed()
                    .thenComparing(one -> one.card.due().instant().orElse(Instant.MAX))
                    .compare(this, other);
        }
    }

    private Ranked ranked(Visit visit, HeadCard card) {
        var burns = moment.ringing(visit).stream()
                .anyMatch(bell -> bell.kind() == BellKind.BURNING || bell.kind() == BellKind.HOT_FOIL);
        return new Ranked(burns, card);
    }

    /** A toner at the basin, say: it is rinsed where it was put on. */
    private Stream<Ranked> atBasins() {
        return moment.floor().openVisits().stream()
                .filter(visit -> visit.place() instanceof Place.Basin)
                .map(visit -> new HeadTelling(moment, visit, false))
                .filter(head -> head.timing.isAnythingOn())
                .map(head -> ranked(
                        head.visit,
                        card(head, head.rinse().orElseGet(head::due), List.of(new HeadPresses(head, rows).rinse()))));
    }

    private HeadCard card(Turn turn, Visit visit) {
        var head = new HeadTelling(moment, visit, false);
        return card(head, due(head, turn), List.of(new HeadPresses(head, rows).rinse(), turns.pin(visit)));
    }

    private static HeadCard card(HeadTelling head, Due due, List<Press> presses) {
        return HeadCards.of(head, due, new BasinCautions(head).all(), presses);
    }

    /** The turn at the basin; a rinse that rings comes before it. Looks at hair and scalp are the stylist's. */
    private Due due(HeadTelling head, Turn turn) {
        return head.rinse()
                .filter(due -> due.urgency() == Urgency.MEDIUM || due.urgency() == Urgency.HIGH)
                .map(due -> new Due(
                        moment.say("basins.ringing", due.what(), turns.letter(turn)),
                        due.at(),
                        due.urgency(),
                        turns.aside(turn)))
                .orElseGet(() -> turns.due(turn));
    }
}
