package rinsebell.web.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.turnaround.Range;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.turnaround.Wish;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.DeskBoard;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.Press;

/** The desk screen: when each chair is likely free and by when almost surely, and what to tell whoever asks. */
public final class DeskBoardTelling {
    /** What people mostly ask for at a desk. */
    private static final List<List<Service>> WISHES =
            List.of(List.of(Service.CUT, Service.BLOW_DRY), List.of(Service.BOWL, Service.BLOW_DRY));

    private final Moment moment;
    private final ToldTelling told;

    public DeskBoardTelling(Moment moment) {
        this.moment = moment;
        this.told = new ToldTelling(moment);
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
        var ask = Press.opens(moment.say("desk.ask"), moment.say("desk.ask.hint"), "/welcome?place=bench");
        return new DeskBoard(
                rows,
                told.overruns(),
                waiting,
                walkIns(rows),
                ask.as(Press.Weight.MAIN),
                new ChairHours(moment).hours());
    }

    private DeskBoard.Waiting waiting(Visit visit) {
        return new DeskBoard.Waiting(
                moment.label(visit),
                new HeadTelling(moment, visit, false).stage(),
                Moment.joined(" · ", times(visit), told.said(visit)),
                told.presses(visit),
                "/visits/" + visit.id().value());
    }

    /** When a chair is free for them, or when they are done. */
    private String times(Visit visit) {
        return turnaround()
                .waits(visit.id())
                .map(one -> moment.say(
                        "desk.waits",
                        String.valueOf(one.chair()),
                        SpanTelling.span(moment, one.begins()),
                        SpanTelling.span(moment, one.done())))
                .or(() ->
                        turnaround().end(visit.id()).map(end -> moment.say("desk.ends", SpanTelling.span(moment, end))))
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
        var comes = Turnaround.of(moment.floor(), moment.now(), Wish.of(wish))
                .comes()
                .orElseThrow();
        return moment.say(
                "desk.walkin.wish",
                moment.listed("list.and", wish.stream().map(moment::say).toList()),
                SpanTelling.clock(moment, comes.begins().likely()),
                String.valueOf(comes.chair()),
                SpanTelling.span(moment, comes.done()));
    }

    private DeskBoard.Row row(int number) {
        return holder(moment, number)
                .map(visit -> taken(number, visit))
                .orElseGet(() -> new DeskBoard.Row(
                        String.valueOf(number),
                        "",
                        "",
                        moment.say("free"),
                        moment.say("desk.now"),
                        "",
                        moment.say("desk.free"),
                        List.of(),
                        "/welcome?place=chair-" + number));
    }

    /** Whoever holds a chair, there or at a basin meanwhile. */
    static Optional<Visit> holder(Moment moment, int number) {
        var place = new Place.Chair(number);
        return moment.floor().openVisits().stream()
                .filter(visit -> place.equals(visit.stay().chair()) && !(visit.place() instanceof Place.Bench))
                .filter(visit -> !(visit.place() instanceof Place.Chair) || place.equals(visit.place()))
                // Who sits there comes before who went to a basin and may find it taken.
                .min(Comparator.comparing((Visit visit) -> visit.place() instanceof Place.Basin));
    }

    private DeskBoard.Row taken(int number, Visit visit) {
        var end = turnaround().end(visit.id());
        return new DeskBoard.Row(
                String.valueOf(number),
                moment.label(visit),
                moment.staff(visit),
                new HeadTelling(moment, visit, false).stage(),
                clock(end.map(Range::likely)),
                clock(end.map(Range::latest)),
                Moment.joined(" · ", tell(visit, end), told.said(visit)),
                told.presses(visit),
                "/visits/" + visit.id().value());
    }

    private String clock(Optional<Instant> at) {
        return at.map(instant -> SpanTelling.clock(moment, instant)).orElse("");
    }

    private String tell(Visit visit, Optional<Range> end) {
        return end.filter(range -> ChairTime.isKnown(visit))
                .map(range -> {
                    var times = Stream.of(range.likely(), range.latest())
                            .map(at -> SpanTelling.clock(moment, at))
                            .distinct()
                            .toArray();
                    return moment.say(times.length == 1 ? "desk.until.once" : "desk.until", times);
                })
                .orElse(moment.say("desk.unknown"));
    }
}
