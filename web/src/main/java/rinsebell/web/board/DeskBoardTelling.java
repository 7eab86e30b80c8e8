package rinsebell.web.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.turnaround.Range;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.DeskBoard;
import rinsebell.web.view.Fragment;

/** The desk screen: when each chair is likely free and by when almost surely, and what to tell whoever asks. */
public final class DeskBoardTelling {
    /** What people mostly ask for at a desk. */
    private static final List<List<Service>> WISHES =
            List.of(List.of(Service.CUT, Service.BLOW_DRY), List.of(Service.BOWL, Service.BLOW_DRY));

    private final Moment moment;

    public DeskBoardTelling(Moment moment) {
        this.moment = moment;
    }

    private Turnaround turnaround() {
        return moment.floor().turnaround(moment.now());
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
        var waiting = moment.floor().at(Place.BENCH).stream().map(this::waiting).toList();
        return new DeskBoard(rows, waiting, walkIns(rows));
    }

    private DeskBoard.Waiting waiting(Visit visit) {
        return new DeskBoard.Waiting(
                moment.label(visit),
                new HeadTelling(moment, visit, false).stage(),
                times(visit),
                "/visits/" + visit.id().value());
    }

    /** When a chair is free for them, or when they are done. */
    private String times(Visit visit) {
        return turnaround().waits().stream()
                .filter(one -> one.visit().filter(visit.id()::equals).isPresent())
                .findFirst()
                .map(one -> moment.say("desk.waits", span(one.begins()), span(one.done())))
                .or(() -> turnaround().end(visit.id()).map(end -> moment.say("desk.ends", span(end))))
                .orElseGet(
                        () -> moment.say("desk.since", moment.clock(visit.stay().placeSince())));
    }

    /** What can be told to somebody who comes in now. */
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
        WISHES.forEach(wish -> all.add(wish(wish)));
        all.add(moment.say("desk.walkin.gate"));
        if (!moment.floor().outlook(moment.now()).plan().isSafe()) {
            all.add(moment.say("desk.walkin.clash"));
        }
        return all;
    }

    private String wish(List<Service> wish) {
        var waits = Turnaround.of(moment.floor(), moment.now(), wish).waits();
        var comes = waits.get(waits.size() - 1);
        return moment.say(
                "desk.walkin.wish",
                moment.listed("list.and", wish.stream().map(moment::say).toList()),
                moment.clock(rounded(comes.begins().likely())),
                String.valueOf(comes.chair()),
                span(comes.done()));
    }

    /** Such as "16:25 to 16:45". */
    private String span(Range range) {
        var likely = moment.clock(rounded(range.likely()));
        var latest = moment.clock(rounded(range.latest()));
        return likely.equals(latest) ? likely : moment.say("desk.span", likely, latest);
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
        var end = turnaround().end(visit.id());
        return new DeskBoard.Row(
                String.valueOf(number),
                moment.label(visit),
                moment.staff(visit),
                new HeadTelling(moment, visit, false).stage(),
                end.map(Range::likely).map(this::rounded).map(moment::clock).orElse(""),
                end.map(Range::latest).map(this::rounded).map(moment::clock).orElse(""),
                tell(visit, end),
                "/visits/" + visit.id().value());
    }

    /** Of somebody with whom nothing was begun and for whom nothing is listed nobody can say anything. */
    private String tell(Visit visit, Optional<Range> end) {
        var isKnown = ChairTime.isKnown(visit);
        return end.filter(range -> isKnown)
                .map(range -> moment.say("desk.until", span(range)))
                .orElse(moment.say("desk.unknown"));
    }

    /** Nobody is told a time to the minute, nor is the board sent again each second while a head is overdue. */
    private Instant rounded(Instant at) {
        return ChairTime.rounded(at);
    }
}
