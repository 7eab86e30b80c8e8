package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Urgency;

/** The basins on the chairs' axis: who is there, and the turns that the dispatch rule keeps for the next. */
final class BasinRows {
    private final Moment moment;
    private final List<Turn> turns;
    private final Duration rinsing;

    BasinRows(Moment moment) {
        this.moment = moment;
        this.turns = Dispatch.of(moment.floor());
        this.rinsing = moment.floor().salon().policy().working().rinsing();
    }

    List<BasinRow> all() {
        var basins = open();
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().basins())
                .mapToObj(number -> row(Place.basin(number), basins))
                .toList();
    }

    private List<Integer> open() {
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().basins())
                .filter(number -> !moment.floor().day().closedBasins().contains(number))
                .boxed()
                .toList();
    }

    private BasinRow row(Place place, List<Integer> open) {
        var basin = (Place.Basin) place;
        var bars = new ArrayList<Bar>();
        moment.floor().at(basin).forEach(visit -> bars.add(there(visit)));
        var lane = open.indexOf(basin.number());
        for (var i = 0; i < turns.size() && lane >= 0; i++) {
            if (i % open.size() == lane) {
                bars.add(kept(turns.get(i)));
            }
        }
        var ribbon = new Ribbon("", moment.epoch(), null, List.of(new Lane(0, 1, bars, List.of(), List.of())));
        return new BasinRow(basin.letter(), state(basin, lane < 0), Urgency.CALM, ribbon);
    }

    private String state(Place.Basin basin, boolean closed) {
        if (closed) {
            return moment.say("basin.closed");
        }
        return moment.floor().at(basin).stream()
                .findFirst()
                .map(visit -> moment.say("basin.has", moment.label(visit)))
                .orElse(moment.say("free"));
    }

    private Bar there(Visit visit) {
        var from = visit.stay().placeSince();
        return bar(BarKind.AT_BASIN, from, from.plus(rinsing), moment.label(visit));
    }

    private Bar kept(Turn turn) {
        var label = moment.floor()
                .visit(turn.visit())
                .map(visit -> moment.place(visit.place()))
                .orElse("");
        return bar(BarKind.KEPT, turn.startBy(), turn.startBy().plus(rinsing), label);
    }

    private Bar bar(BarKind kind, Instant from, Instant until, String text) {
        return new Bar(kind, moment.second(from), moment.second(until), text);
    }
}
