package rinsebell.app.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Turns;

/**
 * Wakes when the next stage of any bell begins and lets the screens be drawn again. It sleeps on a computed instant and
 * looks again at least every few seconds, so that a wake of the machine or a step of a clock delays no bell longer.
 */
public final class BellWatch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(BellWatch.class);
    private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);

    /** What is due sooner than that is on its way before anybody could prepare for it. */
    private static final Duration TOO_SOON = Duration.ofMillis(50);

    /** Pages also tell what no bell marks, such as the hours on an axis, so they are drawn again at least this often. */
    private static final Duration DRAW_AGAIN = Duration.ofSeconds(30);

    private final Supplier<List<Bell>> bells;
    private final SalonClock clock;
    private final Word word;
    private final ScheduledExecutorService thread;
    private @Nullable ScheduledFuture<?> next;
    private Turns turns = new Turns(List.of());
    private Instant rungUntil;
    private Instant drawnAt;
    private @Nullable Instant announced;

    /** To whom the watch leaves word. Both must return at once. */
    public interface Word {
        /** Something has fallen due, or it is time to draw the screens again. */
        void due();

        /** Something falls due soon, at an instant of the salon. It is said once, and not where there is no time for it. */
        default void soon(Instant due) {}
    }

    /**
     * A watch that watches from now on.
     *
     * @param bells those of the floor as it stands
     * @param clock the salon's
     */
    public BellWatch(Supplier<List<Bell>> bells, SalonClock clock, Word word) {
        this.bells = bells;
        this.clock = clock;
        this.word = word;
        this.rungUntil = clock.now();
        this.drawnAt = rungUntil;
        this.thread = Threads.timer("bell-watch");
        moved();
    }

    /** The floor has changed, and with it perhaps what is due next. */
    public void moved() {
        unlessClosed(() -> thread.execute(this::look));
    }

    /** Runs a task after every look that was asked for before. */
    void afterLook(Runnable task) {
        thread.execute(task);
    }

    /** Whatever goes wrong in one look, the next one comes: a watch that stops would be every bell dropped at once. */
    private void look() {
        try {
            sleep(untilNext(ringWhatIsDue()));
        } catch (RuntimeException e) {
            LOG.error("a look at the bells failed", e);
            sleep(LOOK_AGAIN);
        }
    }

    private Instant ringWhatIsDue() {
        var now = clock.now();
        var due = turns().after(rungUntil).filter(at -> !at.isAfter(now));
        rungUntil = now;
        if (due.isPresent() || !now.isBefore(drawnAt.plus(DRAW_AGAIN)) || now.isBefore(drawnAt)) {
            drawnAt = now;
            // Whatever was prepared for the next has been overtaken by this.
            announced = null;
            word.due();
        }
        return now;
    }

    private Duration untilNext(Instant now) {
        return turns().after(now).map(this::until).orElse(LOOK_AGAIN);
    }

    private Duration until(Instant due) {
        var wait = clock.realTimeUntil(due);
        if (wait.compareTo(LOOK_AGAIN) >= 0) {
            return LOOK_AGAIN;
        }
        if (wait.compareTo(TOO_SOON) > 0 && !due.equals(announced)) {
            announced = due;
            word.soon(due);
        }
        return wait;
    }

    private Turns turns() {
        var now = bells.get();
        if (turns.bells() != now) {
            turns = new Turns(now);
        }
        return turns;
    }

    private void sleep(Duration wait) {
        if (next != null) {
            next.cancel(false);
        }
        unlessClosed(() -> next = thread.schedule(this::look, wait.toNanos(), TimeUnit.NANOSECONDS));
    }

    private static void unlessClosed(Runnable step) {
        try {
            step.run();
        } catch (RejectedExecutionException closed) {
            LOG.debug("the watch is closed");
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
