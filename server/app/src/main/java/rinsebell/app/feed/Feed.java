package rinsebell.app.feed;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;

/**
 * Sends every screen what changed on its board.
 *
 * <p>All drawing happens on one thread of the feed's own: {@link #publish} only leaves word, so whoever changes the
 * floor never waits for a template and much less for a network. Several changes in a row may be sent as one. A board
 * is drawn once for all its screens, and only pieces that show something else than before are sent.
 */
public final class Feed implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Feed.class);

    private final FeedSource source;
    private final FeedLimits limits;
    private final String run;
    private final Set<Screen> screens = ConcurrentHashMap.newKeySet();
    /** Counted at the door: a screen is among the others only when the feed's thread has come to it. */
    private final AtomicInteger seatsTaken = new AtomicInteger();

    private final Map<String, BoardCopy> copies = new HashMap<>();
    private final AtomicBoolean asked = new AtomicBoolean();
    private final ScheduledExecutorService thread;

    /** A feed that beats from now on. */
    public Feed(FeedSource source, FeedLimits limits) {
        this.source = source;
        this.limits = limits;
        this.run = source.beat().run();
        this.thread = Threads.timer("feed");
        long beatMillis = limits.beat().toMillis();
        var unused = this.thread.scheduleAtFixedRate(this::beat, beatMillis, beatMillis, TimeUnit.MILLISECONDS);
    }

    /** Leaves word that the floor has changed or a bell fell due. Returns at once, on whatever thread. */
    public void publish() {
        if (asked.compareAndSet(false, true)) {
            run(this::sendChanges);
        }
    }

    /** Leaves word that something falls due at that instant: it is drawn meanwhile. Returns at once. */
    public void ahead(Instant due) {
        run(() -> boards().forEach(board -> prepare(board, due)));
    }

    /** Lets the screens hear before the next beat what time it is: the clock was put right, and they ring by it. */
    public void beatAtOnce() {
        run(this::beat);
    }

    /** How many screens are connected. */
    public int screenCount() {
        return screens.size();
    }

    /**
     * Lets a screen in: it is sent the whole board first and changes from then on. Whoever was let in must leave.
     *
     * @param board the name of its board
     * @param cutOff breaks its connection
     * @return empty when as many are here as may be
     */
    Optional<Screen> join(String board, Runnable cutOff) {
        if (seatsTaken.incrementAndGet() > limits.screens()) {
            seatsTaken.decrementAndGet();
            return Optional.empty();
        }
        return Optional.of(joined(board, cutOff));
    }

    private Screen joined(String board, Runnable cutOff) {
        Screen screen = new Screen(board, limits.waitingBatches(), cutOff);
        if (!run(() -> welcome(screen))) {
            screen.end();
        }
        return screen;
    }

    /** What a screen that came now would be sent first. */
    CompletableFuture<byte[]> beginning(String board) {
        return CompletableFuture.supplyAsync(
                () -> {
                    update(board);
                    return beginningOf(board).orElseThrow(() -> new IllegalStateException("board can't be drawn"));
                },
                thread);
    }

    void leave(Screen screen) {
        screen.end();
        screens.remove(screen);
        seatsTaken.decrementAndGet();
    }

    /** Ends every stream and stops the beat. */
    @Override
    public void close() {
        thread.shutdownNow();
        screens.forEach(Screen::end);
    }

    /** Answers whether the task will run: it will not once the feed is closed. */
    private boolean run(Runnable task) {
        try {
            thread.execute(task);
            return true;
        } catch (RejectedExecutionException closed) {
            return false;
        }
    }

    /** The board is brought up to date for the screens that have it already; the new one then gets all of it. */
    private void welcome(Screen screen) {
        update(screen.board());
        beginningOf(screen.board()).ifPresentOrElse(beginning -> begin(screen, beginning), screen::drop);
    }

    private Optional<byte[]> beginningOf(String board) {
        return Optional.ofNullable(copies.get(board))
                .map(copy -> BoardCopy.joined(List.of(Events.RETRY, Events.beat(source.beat()), copy.whole())));
    }

    private void begin(Screen screen, byte[] beginning) {
        screen.send(beginning);
        screens.add(screen);
        forgetIfGone(screen);
    }

    /** A screen may leave before it was let in; whoever comes second removes it. */
    private void forgetIfGone(Screen screen) {
        if (screen.closed()) {
            screens.remove(screen);
        }
    }

    private void sendChanges() {
        asked.set(false);
        boards().forEach(this::update);
        copies.keySet().removeIf(board -> screensOf(board).isEmpty());
    }

    /** Every board that somebody looks at. */
    private List<String> boards() {
        return screens.stream().map(Screen::board).distinct().toList();
    }

    /** What can't be drawn ahead is drawn when it is due, and what goes wrong is said then. */
    private void prepare(String board, Instant due) {
        try {
            source.drawAhead(board, due)
                    .ifPresent(drawn -> Optional.ofNullable(copies.get(board)).ifPresent(copy -> copy.prepare(drawn)));
        } catch (RuntimeException e) {
            LOG.warn("board {} can't be drawn ahead", board, e);
        }
    }

    /**
     * Brings every screen of one board up to date. A board that cannot be drawn, which is a bug, loses its screens:
     * they show that they hear nothing, and that is honest, where an old picture beside a living beat is not.
     */
    private void update(String board) {
        try {
            source.draw(board).ifPresentOrElse(drawn -> sendTo(board, drawn), () -> dropAll(board));
        } catch (RuntimeException e) {
            LOG.error("board {} can't be drawn; its screens are cut off", board, e);
            dropAll(board);
        }
    }

    private void sendTo(String board, Board drawn) {
        byte[] batch = copies.computeIfAbsent(board, name -> new BoardCopy(run)).update(drawn);
        if (batch.length > 0) {
            screensOf(board).forEach(screen -> screen.send(batch));
        }
    }

    private void dropAll(String board) {
        copies.remove(board);
        screens.stream().filter(screen -> screen.board().equals(board)).forEach(Screen::drop);
    }

    private List<Screen> screensOf(String board) {
        return screens.stream().filter(screen -> screen.board().equals(board)).toList();
    }

    private void beat() {
        try {
            byte[] beat = Events.beat(source.beat());
            screens.forEach(screen -> screen.beat(beat, limits.beatsInOneWrite()));
        } catch (RuntimeException e) {
            LOG.error("a beat failed", e);
        }
    }
}
