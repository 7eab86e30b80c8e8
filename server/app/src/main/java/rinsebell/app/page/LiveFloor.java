package rinsebell.app.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.feed.Beat;
import rinsebell.app.feed.Board;
import rinsebell.app.feed.FeedSource;
import rinsebell.app.feed.Fragment;
import rinsebell.app.time.SalonClock;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.Words;
import rinsebell.web.board.Boards;
import rinsebell.web.board.Moment;
import rinsebell.web.view.View;

/** Draws the floor as it is now, for pages and for the feed. */
public final class LiveFloor implements FeedSource {
    private final Supplier<Snapshot> floor;
    private final SalonClock clock;
    private final Paper paper;
    private final String run = UUID.randomUUID().toString().substring(0, 8).toLowerCase(Locale.ROOT);
    private final AtomicLong drawn = new AtomicLong();

    /**
     * What pages are drawn with.
     *
     * @param pages the templates
     * @param words the message bundle
     * @param assets where style, scripts and fonts lie
     */
    public record Paper(Pages pages, Words words, Assets assets) {}

    public LiveFloor(Supplier<Snapshot> floor, SalonClock clock, Paper paper) {
        this.floor = floor;
        this.clock = clock;
        this.paper = paper;
    }

    public Snapshot snapshot() {
        return floor.get();
    }

    /** The floor at this instant, with the words to tell it. */
    public Moment moment() {
        return moment(floor.get(), clock.now());
    }

    private Moment moment(Snapshot snapshot, Instant now) {
        return new Moment(snapshot.floor(), snapshot::text, snapshot.bells(), now, paper.words());
    }

    /** A whole page; it embeds a press id for browsers without script. */
    public String page(View view, Moment moment) {
        return paper.pages()
                .render(
                        view,
                        screen(
                                moment,
                                drawn.incrementAndGet(),
                                UUID.randomUUID().toString()));
    }

    /** A part that is sent in answer to a press. */
    public String part(View view, Moment moment) {
        return paper.pages().render(view, screen(moment, drawn.incrementAndGet(), null));
    }

    private Screen screen(Moment moment, long number, @org.jspecify.annotations.Nullable String press) {
        return new Screen(moment.words(), paper.assets(), moment.time(), moment.now(), run + "-" + number, press);
    }

    @Override
    public Optional<Board> draw(String board) {
        var moment = moment();
        var number = drawn.incrementAndGet();
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
        return new Beat(run, drawn.get(), clock.now().toEpochMilli(), clock.speed(), clock.stepped());
    }
}
