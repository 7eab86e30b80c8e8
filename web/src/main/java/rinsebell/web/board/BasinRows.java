package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Outlook;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.basin.Work;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Reach;
import rinsebell.web.view.Urgency;

/** The basins on the chairs' axis: who is there, and the turns that are kept for the next. */
final class BasinRows {
    /** Whoever is taken to be done as soon as that is drawn as still there, for nobody knows how long. */
    private static final Duration LINGERS = Duration.ofMinutes(3);

    private final Moment moment;
    private final Outlook outlook;
    private final Duration rinsing;
    private final @Nullable Reach whole;

    BasinRows(Moment moment) {
        this(moment, null);
    }

    /** @param whole the stretch to show whole; null for rows that pan with the floor */
    BasinRows(Moment moment, @Nullable Reach whole) {
        this.moment = moment;
        this.whole = whole;
        this.outlook = moment.floor().outlook(moment.now());
        this.rinsing = moment.floor().salon().policy().working().rinsing();
    }

    List<BasinRow> all() {
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().basins())
                .mapToObj(number -> row(new Place.Basin(number)))
                .toList();
    }

    /** Where a head that is not at a basin yet can be rinsed this minute. */
    Optional<Place.Basin> freeFor(Visit visit) {
        return outlook.turn(visit.id())
                .map(turn -> new Place.Basin(turn.basin()))
                .filter(basin -> moment.floor().at(basin).isEmpty());
    }

    private boolean isClosed(Place.Basin basin) {
        return moment.floor().day().closedBasins().containsKey(basin.number());
    }

    private BasinRow row(Place.Basin basin) {
        var ribbon = new Ribbon("", moment.epoch(), whole, lanes(basin));
        return new BasinRow(basin.letter(), state(basin), Urgency.CALM, ribbon);
    }

    /** Turns that lie over each other stand one below the other: none hides another. */
    private List<Lane> lanes(Place.Basin basin) {
        var lanes = new ArrayList<List<Bar>>();
        moment.floor().at(basin).forEach(visit -> lay(there(visit), lanes));
        outlook.plan().at(basin.number()).forEach(turn -> lay(bars(turn), lanes));
        return IntStream.range(0, lanes.size())
                .mapToObj(i -> new Lane(i, lanes.size(), lanes.get(i), marks(basin, lanes.get(i)), List.of()))
                .toList();
    }

    private static void lay(List<Bar> bars, List<List<Bar>> lanes) {
        lanes.stream()
                .filter(lane -> lane.stream().noneMatch(laid -> bars.stream().anyMatch(bar -> overlap(laid, bar))))
                .findFirst()
                .ifPresentOrElse(lane -> lane.addAll(bars), () -> lanes.add(new ArrayList<>(bars)));
    }

    /** Whoever stays longer than a rinse takes is drawn until now, and nobody knows for how long. */
    private static boolean overlap(Bar one, Bar other) {
        return takesRoom(one) && takesRoom(other) && one.from() < other.until() && other.from() < one.until();
    }

    private static boolean takesRoom(Bar bar) {
        return bar.kind() != BarKind.LINGERING && bar.kind() != BarKind.WINDOW && bar.kind() != BarKind.BEFORE;
    }

    private String state(Place.Basin basin) {
        if (isClosed(basin)) {
            return moment.say("basin.closed");
        }
        return moment.floor().at(basin).stream()
                .findFirst()
                .map(visit -> moment.say("basin.has", moment.label(visit)))
                .or(() -> outlook.plan().at(basin.number()).stream().findFirst().map(this::next))
                .orElse(moment.say("free"));
    }

    private String next(Turn turn) {
        return moment.say("basin.next", label(turn), moment.clock(turn.water()));
    }

    private List<Bar> there(Visit visit) {
        var from = visit.stay().placeSince();
        var usual = from.plus(rinsing);
        var until = outlook.station().basins().stream()
                .filter(basin -> visit.place().equals(new Place.Basin(basin.number())))
                .map(Basin::freeFrom)
                .filter(free -> free.isAfter(moment.now().plus(LINGERS)))
                .findFirst()
                .orElse(usual);
        return List.of(
                bar(BarKind.LINGERING, until, until.plus(RibbonDrawing.OPEN_END), ""),
                bar(BarKind.AT_BASIN, from, until, moment.label(visit)));
    }

    /** The work before the basin, the stay, and within it the time in which a toner works. */
    private List<Bar> bars(Turn turn) {
        var all = new ArrayList<Bar>();
        var kind = turn.isLate() ? BarKind.TOO_LATE : BarKind.KEPT;
        if (turn.begin().isBefore(turn.water())) {
            all.add(bar(BarKind.BEFORE, turn.begin(), turn.water(), ""));
        }
        all.add(bar(kind, turn.water(), turn.end(), label(turn)));
        if (turn.job().earliest().isBefore(turn.job().latest())) {
            all.add(bar(BarKind.WINDOW, turn.job().earliest(), turn.job().latest(), ""));
        }
        var at = turn.water();
        for (var part : turn.job().work().parts()) {
            var until = at.plus(part.takes());
            if (part.what() == Work.What.TONER_WORKS) {
                all.add(bar(BarKind.TONER, at, until, ""));
            }
            at = until;
        }
        return all;
    }

    /** By when the water of each must be on. */
    private List<Mark> marks(Place.Basin basin, List<Bar> lane) {
        return outlook.plan().at(basin.number()).stream()
                .filter(turn -> lane.stream().anyMatch(bar -> isOf(bar, turn)))
                .map(turn -> new Mark(
                        MarkKind.LATEST,
                        moment.second(turn.job().latest()),
                        turn.isLate() ? Urgency.MEDIUM : Urgency.CALM))
                .toList();
    }

    private boolean isOf(Bar bar, Turn turn) {
        return (bar.kind() == BarKind.KEPT || bar.kind() == BarKind.TOO_LATE)
                && bar.from() == moment.second(turn.water());
    }

    /** The chair; whoever waits on the bench goes by their own label. */
    private String label(Turn turn) {
        return moment.floor().visit(turn.visit()).map(moment::whereabouts).orElse("");
    }

    private Bar bar(BarKind kind, Instant from, Instant until, String text) {
        return new Bar(kind, moment.second(from), moment.second(until), text);
    }
}
