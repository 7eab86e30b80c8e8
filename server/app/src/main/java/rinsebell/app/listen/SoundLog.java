package rinsebell.app.listen;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.floor.report.Sounded;

/**
 * Writes what devices sounded behind, on a thread of its own. Nothing waits for it: what comes too fast, or can't be
 * written, is dropped and counted.
 */
public final class SoundLog implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SoundLog.class);
    private static final Duration ROUND = Duration.ofSeconds(2);
    private static final Duration DAY = Duration.ofDays(1);

    /** So many may wait. */
    static final int MOST_WAITING = 1_000;

    /** More than the devices of a large salon sound in a day; strangers may not fill the disk. What is told again fills none. */
    static final int MOST_A_DAY = 20_000;

    private final ToIntFunction<List<Sounded>> write;
    private final Supplier<Instant> clock;
    private final BlockingQueue<Sounded> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final AtomicLong dropped = new AtomicLong();
    private final ScheduledExecutorService thread = Threads.timer("soundings");
    private Instant countedFrom = Instant.MIN;
    private int counted;

    /**
     * @param write writes all of them or none, but for those that are written already; tells how many it wrote
     * @param clock the salon's
     */
    public SoundLog(ToIntFunction<List<Sounded>> write, Supplier<Instant> clock) {
        this.write = write;
        this.clock = clock;
    }

    /** Writes from now on. */
    public void begin() {
        var unused =
                thread.scheduleWithFixedDelay(this::round, ROUND.toMillis(), ROUND.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Takes it to be written, or drops it. */
    public void take(Sounded one) {
        if (!waiting.offer(one)) {
            dropped.incrementAndGet();
        }
    }

    /** How many were dropped since the start. */
    public long dropped() {
        return dropped.get();
    }

    /** Writes what waits. */
    void round() {
        var batch = new ArrayList<Sounded>();
        waiting.drainTo(batch);
        var taken = batch.subList(0, Math.min(batch.size(), left()));
        drop(batch.size() - taken.size(), "more than devices sound in a day");
        if (!taken.isEmpty()) {
            write(taken);
        }
    }

    private void write(List<Sounded> batch) {
        try {
            counted += write.applyAsInt(batch);
        } catch (RuntimeException e) {
            drop(batch.size(), String.valueOf(e.getMessage()));
        }
    }

    /** How many more a day may have; a day begins with the first after the one before. */
    private int left() {
        var now = clock.get();
        if (now.isBefore(countedFrom) || !now.isBefore(countedFrom.plus(DAY))) {
            countedFrom = now;
            counted = 0;
        }
        return MOST_A_DAY - counted;
    }

    private void drop(int many, String why) {
        if (many > 0) {
            dropped.addAndGet(many);
            LOG.warn("{} soundings of devices were not written down: {}", many, why);
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
        round();
    }
}
