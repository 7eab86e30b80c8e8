package rinsebell.app.copy;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.app.time.TimeSources;
import rinsebell.db.Copies;

/**
 * Makes a copy of the tables each hour, on a thread of its own, and one after the start when the last is older than that.
 * One that fails is told of and tried again; it stops nothing. Where something was erased, the file that the tables lie in
 * is compacted right behind a copy: whatever becomes of the file, what stands nowhere else is in that.
 */
public final class HourlyCopies implements AutoCloseable {

    static final Duration APART = Duration.ofHours(1);

    private static final Logger LOG = LoggerFactory.getLogger(HourlyCopies.class);
    private static final Duration ROUND = Duration.ofMinutes(1);

    /** A copy takes a moment; a stop that waits longer than this is one that hangs. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Copies copies;
    private final Compacting compacting;
    private final TimeSources time;
    private final ScheduledExecutorService thread = Threads.timer("copies");
    private @Nullable Instant last;
    private volatile @Nullable Instant failingSince;

    /** @param time of which the wall clock names the copies */
    public HourlyCopies(Copies copies, Compacting compacting, TimeSources time) {
        this.copies = copies;
        this.compacting = compacting;
        this.time = time;
    }

    /** Begins with the first copy, if it is due. */
    public void begin() {
        var unused = thread.scheduleWithFixedDelay(this::round, 0, ROUND.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Since when copies have failed; empty when the last one did not. */
    public Optional<Instant> failingSince() {
        return Optional.ofNullable(failingSince);
    }

    void round() {
        Instant now = Instant.ofEpochMilli(time.wallMillis());
        try {
            boolean compacts = compacting.isNow(now);
            if (compacts || isDue(now)) {
                copies.make(now);
                last = now;
            }
            failingSince = null;
            if (compacts) {
                compacting.compact(now);
            }
        } catch (IOException | RuntimeException e) {
            LOG.error("no copy could be made, and it is tried again: {}", e.getMessage());
            failingSince = failingSince().orElse(now);
        }
    }

    /** One that seems to come from later was made while the clock was wrong. */
    private boolean isDue(Instant now) throws IOException {
        Instant newest = last == null ? copies.newest().orElse(Instant.EPOCH) : last;
        return newest.isAfter(now) || !newest.plus(APART).isAfter(now);
    }

    /** Lets a copy that is under way be finished. */
    @Override
    public void close() {
        thread.shutdown();
        try {
            if (!thread.awaitTermination(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
                LOG.warn("a copy was not finished in time");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
