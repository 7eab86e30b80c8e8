package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rinsebell.floor.basin.Dispatch;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.salon.Place;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
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
    private final Map<VisitId, Place.Basin> kept;

    BasinRows(Moment moment) {
        this.moment = moment;
        this.turns = Dispatch.of(moment.floor());
        this.rinsing = moment.floor().salon().policy().working().rinsing();
        this.kept = kept();
    }

    List<BasinRow> all() {
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().basins())
                .mapToObj(number -> row(new Place.Basin(number)))
                .toList();
    }

    private List<Place.Basin> open() {
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().basins())
                .filter(number -> !moment.floor().day().closedBasins().containsKey(number))
                .mapToObj(Place.Basin::new)
                .toList();
    }

    /** Each head in its order goes to the basin that is free first. */
    private Map<VisitId, Place.Basin> kept() {
        var free = new LinkedHashMap<Place.Basin, Instant>();
        open().forEach(basin -> free.put(basin, freeFrom(basin)));
        var kept = new HashMap<VisitId, Place.Basin>();
        for (var turn : free.isEmpty() ? List.<Turn>of() : turns) {
            var basin = free.entrySet().stream()
                    .min(Map.Entry.comparingByValue())
                    .orElseThrow()
                    .getKey();
            kept.put(turn.visit(), basin);
            free.merge(basin, turn.startBy(), Instants::later);
            free.computeIfPresent(basin, (same, from) -> from.plus(rinsing));
        }
        return kept;
    }

    /** A basin at which somebody is serves nobody else before it is empty; one that is empty has been free for ever. */
    private Instant freeFrom(Place.Basin basin) {
        return moment.floor().at(basin).stream()
                .map(visit -> HeadTiming.of(moment.floor(), visit)
                        .rinseBy()
                        .map(limit -> limit.at())
                        .orElse(visit.stay().placeSince())
                        .plus(rinsing))
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    /** The turns of one basin. */
    private List<Turn> turnsAt(Place.Basin basin) {
        return turns.stream()
                .filter(turn -> basin(turn).filter(basin::equals).isPresent())
                .toList();
    }

    /** The basin that is kept for a turn; empty when every basin is out of order. */
    Optional<Place.Basin> basin(Turn turn) {
        return Optional.ofNullable(kept.get(turn.visit()));
    }

    /** Where a head that is not at a basin yet can be rinsed this minute. */
    Optional<Place.Basin> freeFor(Visit visit) {
        return Optional.ofNullable(kept.get(visit.id()))
                .filter(basin -> moment.floor().at(basin).isEmpty());
    }

    private BasinRow row(Place.Basin basin) {
        var ribbon = new Ribbon("", moment.epoch(), null, lanes(basin));
        return new BasinRow(basin.letter(), state(basin), Urgency.CALM, ribbon);
    }

    /** Turns that lie over each other stand one below the other: none hides another. */
    private List<Lane> lanes(Place.Basin basin) {
        var lanes = new ArrayList<List<Bar>>();
        moment.floor().at(basin).forEach(visit -> lay(there(visit), lanes));
        turnsAt(basin).forEach(turn -> lay(List.of(kept(turn)), lanes));
        return IntStream.range(0, lanes.size())
                .mapToObj(i -> new Lane(i, lanes.size(), lanes.get(i), List.of(), List.of()))
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
        return one.kind() != BarKind.LINGERING
                && other.kind() != BarKind.LINGERING
                && one.from() < other.until()
                && other.from() < one.until();
    }

    private String state(Place.Basin basin) {
        if (!open().contains(basin)) {
            return moment.say("basin.closed");
        }
        return moment.floor().at(basin).stream()
                .findFirst()
                .map(visit -> moment.say("basin.has", moment.label(visit)))
                .or(() -> turnsAt(basin).stream().findFirst().map(this::next))
                .orElse(moment.say("free"));
    }

    private String next(Turn turn) {
        return moment.say("basin.next", label(turn), moment.clock(turn.startBy()));
    }

    private List<Bar> there(Visit visit) {
        var from = visit.stay().placeSince();
        var until = from.plus(rinsing);
        return List.of(
                bar(BarKind.LINGERING, until, until.plus(RibbonDrawing.OPEN_END), ""),
                bar(BarKind.AT_BASIN, from, until, moment.label(visit)));
    }

    private Bar kept(Turn turn) {
        return bar(BarKind.KEPT, turn.startBy(), turn.startBy().plus(rinsing), label(turn));
    }

    /** The chair; whoever waits on the bench goes by their own label. */
    private String label(Turn turn) {
        return moment.floor().visit(turn.visit()).map(moment::whereabouts).orElse("");
    }

    private Bar bar(BarKind kind, Instant from, Instant until, String text) {
        return new Bar(kind, moment.second(from), moment.second(until), text);
    }
}
