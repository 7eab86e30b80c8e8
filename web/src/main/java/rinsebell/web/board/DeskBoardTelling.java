package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.salon.Place;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.DeskBoard;
import rinsebell.web.view.Fragment;

/** The desk screen: each chair's earliest and latest end by its directions. */
public final class DeskBoardTelling {
    private final Moment moment;

    public DeskBoardTelling(Moment moment) {
        this.moment = moment;
    }

    public List<Fragment> fragments() {
        return List.of(strip(), new TurnTelling(moment).troubles(), board());
    }

    public BellStrip strip() {
        return new BellTelling(moment, false).strip(moment.bells());
    }

    public DeskBoard board() {
        var rows = IntStream.rangeClosed(1, moment.floor().salon().rooms().chairs())
                .mapToObj(this::row)
                .toList();
        var waiting = moment.floor().at(Place.BENCH).stream()
                .map(visit -> new DeskBoard.Waiting(
                        moment.label(visit),
                        new HeadTelling(moment, visit, false).stage(),
                        moment.say("desk.since", moment.clock(visit.stay().placeSince())),
                        "/visits/" + visit.id().value()))
                .toList();
        return new DeskBoard(rows, waiting, walkIns(rows));
    }

    /** Whether a walk-in fits: chairs that are free, the next to be, and whether the basins can take one more. */
    private List<String> walkIns(List<DeskBoard.Row> rows) {
        var all = new ArrayList<String>();
        var free = rows.stream()
                .filter(DeskBoard.Row::isFree)
                .map(DeskBoard.Row::chair)
                .toList();
        all.add(
                free.isEmpty()
                        ? moment.say("desk.walkin.none")
                        : moment.say("desk.walkin.now", free.size(), moment.listed("list.and", free)));
        ends().entrySet().stream()
                .min(Map.Entry.comparingByValue())
                .ifPresent(next -> all.add(moment.say(
                        "desk.walkin.next", next.getKey().toString(), moment.clock(rounded(next.getValue())))));
        if (!moment.floor().outlook(moment.now()).plan().isSafe()) {
            all.add(moment.say("desk.walkin.clash"));
        }
        return all;
    }

    /** The earliest end at each taken chair whose directions tell one. */
    private Map<Integer, Instant> ends() {
        var ends = new TreeMap<Integer, Instant>();
        for (var visit : moment.floor().openVisits()) {
            var chair = visit.stay().chair();
            if (chair != null && !(visit.place() instanceof Place.Bench)) {
                earliest(visit).ifPresent(at -> ends.merge(chair.number(), at, Instants::later));
            }
        }
        return ends;
    }

    private Optional<Instant> earliest(Visit visit) {
        var rinsing = moment.floor().salon().policy().working().rinsing();
        return HeadTiming.of(moment.floor(), visit)
                .readyFrom()
                .map(at -> Instants.later(at, moment.now()).plus(rinsing));
    }

    private DeskBoard.Row row(int number) {
        var place = new Place.Chair(number);
        return moment.floor().openVisits().stream()
                .filter(visit -> place.equals(visit.stay().chair()) && !(visit.place() instanceof Place.Bench))
                .filter(visit -> !(visit.place() instanceof Place.Chair) || place.equals(visit.place()))
                // Who sits there comes before who went to a basin and may find it taken.
                .min(Comparator.comparing((Visit visit) -> visit.place() instanceof Place.Basin))
                .map(visit -> taken(number, visit))
                .orElseGet(() -> new DeskBoard.Row(
                        String.valueOf(number),
                        "",
                        "",
                        moment.say("free"),
                        moment.say("desk.now"),
                        "",
                        moment.say("desk.free"),
                        "/welcome?place=chair-" + number));
    }

    private DeskBoard.Row taken(int number, Visit visit) {
        var timing = HeadTiming.of(moment.floor(), visit);
        var rinsing = moment.floor().salon().policy().working().rinsing();
        var latest = timing.rinseBy()
                .map(limit -> Instants.later(limit.at(), moment.now()).plus(rinsing));
        return new DeskBoard.Row(
                String.valueOf(number),
                moment.label(visit),
                moment.staff(visit),
                new HeadTelling(moment, visit, false).stage(),
                clock(earliest(visit)),
                clock(latest),
                tell(latest),
                "/visits/" + visit.id().value());
    }

    private String clock(Optional<Instant> at) {
        return at.map(this::rounded).map(moment::clock).orElse("");
    }

    private String tell(Optional<Instant> latest) {
        return latest.map(this::rounded)
                .map(at -> moment.say("desk.until", moment.clock(at)))
                .orElse(moment.say("desk.unknown"));
    }

    /** Nobody is told a time to the minute, nor is the board sent again each second while a head is overdue. */
    private Instant rounded(Instant at) {
        var step = Duration.ofMinutes(5).toSeconds();
        return Instant.ofEpochSecond((at.getEpochSecond() + step - 1) / step * step);
    }
}
