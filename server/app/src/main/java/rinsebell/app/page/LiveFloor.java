package rinsebell.app.page;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.feed.Beat;
import rinsebell.app.feed.Board;
import rinsebell.app.feed.FeedSource;
import rinsebell.app.feed.Fragment;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.bell.Returned;
import rinsebell.floor.bell.Turns;
import rinsebell.floor.unit.Instants;
import rinsebell.web.Assets;
import rinsebell.web.Codes;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.Words;
import rinsebell.web.board.Boards;
import rinsebell.web.board.Listening;
import rinsebell.web.board.Moment;
import rinsebell.web.view.View;

/** Draws the floor as it is now, for pages and for the feed. */
public final class LiveFloor implements FeedSource {
    /** What was drawn for an instant is not shown for one that is much later: not all that a page tells hangs on bells. */
    private static final Duration LONGEST_AHEAD = Duration.ofSeconds(1);

    private volatile Shown shown;
    private volatile Ahead ahead;
    private final SalonClock clock;
    private final Paper paper;
    private final Supplier<List<Listening>> listening;
    private final LongSupplier erasings;
    private final String run = UUID.randomUUID().toString().substring(0, 8).toLowerCase(Locale.ROOT);

    /**
     * A floor with its number. Both change as one, so that of two drawings the one with the greater number is never the
     * older one.
     *
     * @param since the salon's time from which on it shows what this number promises
     */
    private record Shown(long number, Snapshot snapshot, Instant since) {
        boolean isTold(Moment moment) {
            return snapshot.floor() == moment.floor()
                    && snapshot.bells() == moment.bells()
                    && !moment.now().isBefore(since);
        }
    }

    /**
     * Boards as they will be when something falls due.
     *
     * @param from what was shown when they were drawn: where something else is shown since, they are worth nothing
     * @param due when
     * @param until before when: from then on the next is due, and what no bell marks has moved on
     * @param around what was told besides, but for the machine's clock
     */
    private record Ahead(Shown from, Instant due, Instant until, Besides around, Map<String, Board> boards) {
        boolean isStill(Shown now, Besides aroundNow) {
            return now.number == from.number + 1
                    && now.snapshot == from.snapshot
                    && !now.since.isBefore(due)
                    && now.since.isBefore(until)
                    && around.equals(aroundNow);
        }
    }

    private record Besides(List<Listening> listening, ClockTrust trust) {}

    /**
     * What pages are drawn with.
     *
     * @param pages the templates
     * @param words the message bundle
     * @param assets where style, scripts and fonts lie
     */
    public record Paper(Pages pages, Words words, Assets assets) {}

    /** @param listening the devices that are there */
    public LiveFloor(Snapshot loaded, SalonClock clock, Paper paper, Supplier<List<Listening>> listening) {
        this(loaded, clock, paper, listening, () -> 0);
    }

    /**
     * @param listening the devices that are there
     * @param erasings how often something was erased
     */
    public LiveFloor(
            Snapshot loaded,
            SalonClock clock,
            Paper paper,
            Supplier<List<Listening>> listening,
            LongSupplier erasings) {
        this.erasings = erasings;
        this.listening = listening;
        this.clock = clock;
        this.shown = new Shown(1, loaded, clock.now());
        this.ahead = new Ahead(shown, Instant.MAX, Instant.MIN, besides(), Map.of());
        this.paper = paper;
    }

    /** Shows a new floor from now on. */
    public synchronized void show(Snapshot next) {
        shown = new Shown(shown.number + 1, next, now(next));
    }

    /** The floor is the same and something of it fell due. */
    public synchronized void fellDue() {
        shown = new Shown(shown.number + 1, shown.snapshot, now(shown.snapshot));
    }

    public Snapshot snapshot() {
        return shown.snapshot;
    }

    /** The floor at this instant, with the words to tell it. */
    public Moment moment() {
        return moment(snapshot());
    }

    private Moment moment(Snapshot snapshot) {
        return moment(snapshot, now(snapshot));
    }

    /** The salon's time, as the floor of this snapshot knows it. */
    private Instant now(Snapshot snapshot) {
        return clock.now(snapshot.floor().lastSeq());
    }

    private Moment moment(Snapshot snapshot, Instant now) {
        var around = new Moment.Around(
                Returned.left(snapshot.returned(), snapshot.floor(), snapshot.bells(), now),
                listening.get(),
                new Moment.Clocks(clock.trust(), clock.wall()));
        return new Moment(snapshot.floor(), snapshot::text, snapshot.bells(), around, now, paper.words());
    }

    /** A whole page; it embeds a press id for browsers without script. */
    public String page(View view, Moment moment) {
        var press = UUID.randomUUID().toString();
        return paper.pages().render(view, screen(moment, number(moment), press));
    }

    /** A part that is sent in answer to a press. */
    public String part(View view, Moment moment) {
        return paper.pages().render(view, screen(moment, number(moment), null));
    }

    /**
     * The number of what is shown now; 0, which gives way to everything, when the moment is of an earlier floor, or from
     * before something of it fell due.
     */
    private long number(Moment moment) {
        var now = shown;
        return now.isTold(moment) ? now.number : 0;
    }

    private Screen screen(Moment moment, long number, @Nullable String press) {
        return new Screen(moment.words(), paper.assets(), moment.time(), moment.now(), run + "-" + number, press);
    }

    @Override
    public boolean knows(String board) {
        return Boards.isKnown(board, snapshot().floor());
    }

    @Override
    public Optional<Board> draw(String board) {
        var now = shown;
        var before = ahead;
        var drawn = before.isStill(now, besides()) ? before.boards.get(board) : null;
        return drawn == null ? drawn(board, moment(now.snapshot), now.number) : Optional.of(drawn);
    }

    @Override
    public Optional<Board> drawAhead(String board, Instant due) {
        var now = shown;
        var before = ahead;
        var around = besides();
        var isSame = before.from == now && before.due.equals(due) && before.around.equals(around);
        var boards = new HashMap<>(isSame ? before.boards : Map.<String, Board>of());
        var drawn = drawn(board, moment(now.snapshot, due), now.number + 1);
        drawn.ifPresent(one -> boards.put(board, one));
        ahead = new Ahead(now, due, isSame ? before.until : until(due, now.snapshot), around, boards);
        return drawn;
    }

    private static Instant until(Instant due, Snapshot snapshot) {
        var latest = due.plus(LONGEST_AHEAD);
        return new Turns(snapshot.bells())
                .after(due)
                .map(next -> Instants.earlier(next, latest))
                .orElse(latest);
    }

    private Besides besides() {
        return new Besides(List.copyOf(listening.get()), clock.trust());
    }

    private Optional<Board> drawn(String board, Moment moment, long number) {
        return Boards.fragments(board, moment)
                .map(fragments -> new Board(number, fragments(fragments, moment, number)));
    }

    private List<Fragment> fragments(List<rinsebell.web.view.Fragment> fragments, Moment moment, long number) {
        return fragments.stream()
                .map(fragment -> new Fragment(
                        fragment.id(), fragment, () -> paper.pages().render(fragment, screen(moment, number, null))))
                .toList();
    }

    @Override
    public Beat beat() {
        return new Beat(
                run,
                shown.number,
                clock.now().toEpochMilli(),
                clock.speed(),
                Codes.of(clock.trust()),
                erasings.getAsLong());
    }
}
