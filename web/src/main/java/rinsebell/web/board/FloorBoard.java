package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rinsebell.floor.salon.Place;
import rinsebell.web.view.Axis;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.ChairRow;
import rinsebell.web.view.Due;
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
        return all;
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
        return new Axis(moment.epoch(), ticks);
    }

    public List<ChairRow> chairs() {
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().chairs())
                .mapToObj(this::chair)
                .toList();
    }

    private ChairRow chair(int number) {
        var place = Place.chair(number);
        // A client at a basin keeps the chair until somebody else sits in it.
        return moment.floor().at(place).stream()
                .findFirst()
                .or(() -> moment.floor().openVisits().stream()
                        .filter(visit -> visit.place() instanceof Place.Basin
                                && place.equals(visit.stay().chair()))
                        .findFirst())
                .map(visit -> new HeadTelling(moment, visit, true))
                .map(head -> new ChairRow(
                        number,
                        moment.label(head.visit),
                        moment.staff(head.visit),
                        head.due(),
                        head.ribbon().panning(),
                        "/visits/" + head.visit.id().value()))
                .orElseGet(() -> new ChairRow(
                        number,
                        "",
                        "",
                        new Due(moment.say("free"), null, Urgency.CALM, ""),
                        new Ribbon("", moment.epoch(), null, List.of()),
                        "/welcome?place=chair-" + number));
    }

    public List<BasinRow> basins() {
        return new BasinRows(moment).all();
    }
}
