package rinsebell.app.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.bell.Bells;

/**
 * Wakes when the next stage of any bell begins and lets the screens be drawn again. It sleeps on a computed instant and
 * looks again at least every few seconds, so that a wake of the machine or a step of a clock delays no bell longer.
 */
public final class BellWatch implements AutoCloseable {
    private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);

    private final Supplier<Snapshot> floor;
    private final SalonClock clock;
    private final Runnable ring;
    private final ScheduledExecutorService thread;
    private @Nullable ScheduledFuture<?> next;
    private Instant rungUntil;

    /**
     * A watch that watches from now on.
     *
     * @param floor the floor as it stands
     * @param clock the salon's
     * @param ring draws the screens again; it must only leave word
     */
    public BellWatch(Supplier<Snapshot> floor, SalonClock clock, Runnable ring) {
        this.floor = floor;
        this.clock = clock;
        this.ring = ring;
        this.rungUntil = clock.now();
        this.thread = Executors.newSingleThreadScheduledExecutor(BellWatch::named);
        moved();
    }

    /** The floor has changed, and with it perhaps what is due next. */
    public void moved() {
        thread.execute(this::look);
    }

    private void look() {
        var now = clock.now();
        var bells = floor.get().bells();
        var passed = Bells.nextAfter(bells, rungUntil).filter(due -> !due.isAfter(now));
        rungUntil = now;
        if (passed.isPresent()) {
            ring.run();
        }
        sleep(Bells.nextAfter(bells, now)
                .map(due -> clock.realTimeOf(Duration.between(now, due)))
                .filter(wait -> wait.compareTo(LOOK_AGAIN) < 0)
                .orElse(LOOK_AGAIN));
    }

    private void sleep(Duration wait) {
        if (next != null) {
            next.cancel(false);
        }
        next = thread.schedule(this::look, wait.toMillis() + 1, TimeUnit.MILLISECONDS);
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }

    private static Thread named(Runnable task) {
        var thread = new Thread(task, "bell-watch");
        thread.setDaemon(true);
        return thread;
    }
}
