package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Axis;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.ChairRow;
import rinsebell.web.view.Due;
import rinsebell.web.view.Ears;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Urgency;

/** The floor screen: it may hang where clients see it, so it tells nothing private and nothing that alarms. */
public final class FloorBoard {
    private static final Duration TICK = Duration.ofMinutes(10);
    private static final Duration AXIS_BACK = Duration.ofHours(2);
    private static final Duration AXIS_AHEAD = Duration.ofHours(3);

    private final Moment moment;

    public FloorBoard(Moment moment) {
        this.moment = moment;
    }

    /** Every live piece of the screen. */
    public List<Fragment> fragments() {
        var all = new ArrayList<Fragment>();
        all.add(strip());
        all.add(axis());
        all.addAll(chairs());
        all.addAll(basins());
        all.add(ears());
        return all;
    }

    public Ears ears() {
        return new EarsTelling(moment).ears();
    }

    public BellStrip strip() {
        return new BellTelling(moment, true).strip(moment.bells());
    }

    public Axis axis() {
        // The axis moves on in steps of its own, so that it is not sent again with every change.
        var from = moment.now().minus(AXIS_BACK).getEpochSecond() / TICK.toSeconds() * TICK.toSeconds();
        var until = moment.now().plus(AXIS_AHEAD).getEpochSecond();
        var ticks = new ArrayList<Axis.Tick>();
        for (var second = from; second <= until; second += TICK.toSeconds()) {
            var at = Instant.ofEpochSecond(second);
            ticks.add(new Axis.Tick(moment.second(at), moment.clock(at)));
        }
        return new Axis(moment.epoch(), null, ticks);
    }

    /** Every chair, and whoever waits on the bench with something on: no head with a clock is left out. */
    public List<ChairRow> chairs() {
        var rows = new ArrayList<ChairRow>();
        IntStream.rangeClosed(1, moment.floor().salon().rooms().chairs()).forEach(number -> rows.addAll(chair(number)));
        moment.floor().at(Place.BENCH).stream()
                .filter(visit -> !visit.onHair().isEmpty())
                .map(visit -> occupied(more(visit), visit))
                .forEach(rows::add);
        return rows;
    }

    /** A correction can bring two clients to one chair: both are shown until somebody says who sits where. */
    private List<ChairRow> chair(int number) {
        var there = moment.floor().at(Place.chair(number));
        return there.isEmpty()
                ? List.of(kept(number)
                        .map(visit -> occupied(chairId(number), visit))
                        .orElseGet(() -> free(number)))
                : IntStream.range(0, there.size())
                        .mapToObj(i -> occupied(i == 0 ? chairId(number) : more(there.get(i)), there.get(i)))
                        .toList();
    }

    /** A client at a basin keeps the chair until somebody else sits in it. */
    private Optional<Visit> kept(int number) {
        return moment.floor().openVisits().stream()
                .filter(visit -> visit.place() instanceof Place.Basin
                        && Place.chair(number).equals(visit.stay().chair()))
                .findFirst();
    }

    private static String chairId(int number) {
        return "row-" + number;
    }

    private static String more(Visit visit) {
        return "row-visit-" + visit.id().value();
    }

    private ChairRow occupied(String id, Visit visit) {
        var head = new HeadTelling(moment, visit, true);
        return new ChairRow(
                id,
                tile(visit),
                moment.label(visit),
                moment.staff(visit),
                head.due(),
                head.ribbon().panning(),
                "/visits/" + visit.id().value());
    }

    /** What the row is called; the chair that is kept for whoever is at a basin. */
    private ChairRow.Tile tile(Visit visit) {
        var chair =
                visit.place() instanceof Place.Chair seat ? seat : visit.stay().chair();
        return visit.place() instanceof Place.Bench || chair == null
                ? ChairRow.Tile.bench(moment.place(Place.BENCH))
                : ChairRow.Tile.chair(chair.number());
    }

    private ChairRow free(int number) {
        return new ChairRow(
                chairId(number),
                ChairRow.Tile.chair(number),
                "",
                "",
                new Due(moment.say("free"), null, Urgency.CALM, ""),
                new Ribbon("", moment.epoch(), null, List.of()),
                "/welcome?place=chair-" + number);
    }

    public List<BasinRow> basins() {
        return new BasinRows(moment).all();
    }
}
