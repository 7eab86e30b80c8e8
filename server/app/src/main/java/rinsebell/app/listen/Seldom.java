package rinsebell.app.listen;

import java.time.Duration;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.app.time.TimeSources;

/**
 * Does something when it is asked for, on a thread of its own, but not more often than it may: whoever asks sooner is served
 * with the next. So nobody who asks again and again keeps the house busy.
 */
public final class Seldom implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Seldom.class);

    private final Runnable work;
    private final Duration apart;
    private final TimeSources time;
    private final ScheduledExecutorService thread = Threads.timer("seldom");
    private boolean asked;
    private long from;

    /** @param apart from one time to the next at least */
    public Seldom(Runnable work, Duration apart, TimeSources time) {
        this.work = work;
        this.apart = apart;
        this.time = time;
        this.from = time.monotonicNanos();
    }

    /** Asks for it. Returns at once; afterwards it is done once at least. */
    public synchronized void ask() {
        if (!asked) {
            asked = true;
            try {
                var unused = thread.schedule(this::act, from - time.monotonicNanos(), TimeUnit.NANOSECONDS);
            } catch (RejectedExecutionException closed) {
                LOG.debug("it is done no more");
            }
        }
    }

    private void act() {
        begin();
        try {
            work.run();
        } catch (RuntimeException e) {
            LOG.error("what was asked for failed", e);
        }
    }

    /** Whoever asks from now on may have something new to show. */
    private synchronized void begin() {
        asked = false;
        from = time.monotonicNanos() + apart.toNanos();
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
