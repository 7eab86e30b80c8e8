package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.salon.Place;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Axis;
import rinsebell.web.view.DeskBoard.Hours;
import rinsebell.web.view.DeskBoard.Track;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Reach;
import rinsebell.web.view.Urgency;

/** The salon's next three hours, drawn: until when each chair is taken, who is next in it, and the turns at the basins. */
final class ChairHours {
    private static final Duration AHEAD = Duration.ofHours(3);
    private static final Duration TICK = Duration.ofMinutes(30);

    /** It is drawn anew in steps of its own, so that it is not sent again each second. */
    private static final Duration STEP = Duration.ofMinutes(10);

    private final Moment moment;
    private final Turnaround turnaround;
    private final Instant from;
    private final Instant until;

    ChairHours(Moment moment) {
        this.moment = moment;
        this.turnaround = moment.floor().turnaround(moment.now());
        this.from = floor(moment.now(), STEP);
        this.until = from.plus(STEP).plus(AHEAD);
    }

    private static Instant floor(Instant at, Duration step) {
        return Instant.ofEpochSecond(at.getEpochSecond() / step.toSeconds() * step.toSeconds());
    }

    Hours hours() {
        var whole = new Reach(moment.second(from), moment.second(until));
        var chairs = IntStream.rangeClosed(1, moment.floor().salon().rooms().chairs())
                .mapToObj(number -> new Track(
                        moment.place(Place.chair(number)),
                        new Ribbon("", moment.epoch(), whole, List.of(lane(number)))));
        var basins = new BasinRows(moment, whole)
                .all().stream().map(row -> new Track(moment.say("basin.named", row.letter()), row.ribbon()));
        return new Hours(axis(whole), Stream.concat(chairs, basins).toList());
    }

    private Axis axis(Reach whole) {
        var ticks = new ArrayList<Axis.Tick>();
        for (var at = floor(from, TICK).plus(TICK); at.isBefore(until); at = at.plus(TICK)) {
            ticks.add(new Axis.Tick(moment.second(at), moment.clock(at)));
        }
        return new Axis(moment.epoch(), whole, ticks);
    }

    private Lane lane(int number) {
        var bars = new ArrayList<Bar>();
        var marks = new ArrayList<Mark>();
        DeskBoardTelling.holder(moment, number).ifPresent(visit -> {
            bars.addAll(held(visit));
            visit.services()
                    .told()
                    .ifPresent(told -> marks.add(new Mark(MarkKind.TOLD, moment.second(told), Urgency.CALM)));
        });
        turnaround.waits().stream()
                .filter(one -> one.chair() == number)
                .flatMap(one -> one.visit().flatMap(moment.floor()::visit).stream()
                        .map(visit -> bar(
                                BarKind.NEXT, one.begins().likely(), one.done().likely(), moment.label(visit))))
                .forEach(bars::add);
        return new Lane(0, 1, bars, marks, List.of());
    }

    private List<Bar> held(Visit visit) {
        return turnaround
                .end(visit.id())
                .map(end -> List.of(
                        bar(BarKind.MAYBE, end.likely(), end.latest(), ""),
                        bar(BarKind.TAKEN, from, end.likely(), moment.label(visit))))
                .orElse(List.of());
    }

    private Bar bar(BarKind kind, Instant begin, Instant end, String text) {
        return new Bar(kind, moment.second(ChairTime.rounded(begin)), moment.second(ChairTime.rounded(end)), text);
    }
}
