package rinsebell.app.privacy;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.app.time.SalonClock;
import rinsebell.db.Retention;
import rinsebell.db.Soundings;
import rinsebell.db.Trail;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.Salon;

/**
 * Lets go of what is past its time by the house's numbers, once on each of the salon's days, and at the start when that
 * day's is missing. A clock that nobody has confirmed erases nothing, and one that is merely wrong little at a time
 * ({@link Retention#until}).
 */
public final class DailyRetention implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(DailyRetention.class);
    private static final Duration ROUND = Duration.ofMinutes(1);

    /** Records are erased one by one, each forced to disk. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Retention retention;
    private final Erasing erasing;
    private final Consumer<Set<TextId>> forget;
    private final Supplier<Floor> floor;
    private final SalonClock clock;
    private final ScheduledExecutorService thread = Threads.timer("retention");
    private volatile boolean closing;
    private Retention.@Nullable Run last;

    /**
     * @param forget shows texts no longer, here and on devices
     * @param floor as it is now
     */
    public DailyRetention(
            Retention retention,
            Erasing erasing,
            Consumer<Set<TextId>> forget,
            Supplier<Floor> floor,
            SalonClock clock) {
        this.retention = retention;
        this.erasing = erasing;
        this.forget = forget;
        this.floor = floor;
        this.clock = clock;
    }

    /** Begins with the first, if it is due. */
    public void begin() {
        var unused = thread.scheduleWithFixedDelay(this::round, 0, ROUND.toMillis(), TimeUnit.MILLISECONDS);
    }

    void round() {
        try {
            Salon salon = floor.get().salon();
            Instant now = clock.now();
            if (salon.isSetUp() && clock.trust() == ClockTrust.AGREES && isDue(salon, now)) {
                retention.until(now).ifPresent(until -> run(salon, now, until));
            }
        } catch (RuntimeException e) {
            LOG.error("what is past its time could not be erased, and it is tried again: {}", e.getMessage());
        }
    }

    /** One that seems to come from later was done while the clock was wrong. */
    private boolean isDue(Salon salon, Instant now) {
        if (last == null) {
            last = retention.last(1).stream().findFirst().orElse(null);
        }
        return last == null || !salon.dayOf(last.at()).equals(salon.dayOf(now));
    }

    /** What is broken off in the middle is begun again with the next round; then the log has what was left. */
    private void run(Salon salon, Instant now, Instant until) {
        var keeping = salon.policy().keeping();
        var past = retention.untouchedSince(keeping.recordsBefore(until, salon.zone()), until);
        var records = 0;
        for (var client : past) {
            if (!closing && !erasing.isHere(client) && erasing.erase(client).orElse(false)) {
                records++;
            }
        }
        var texts = retention.eraseTextsBefore(keeping.textsBefore(until));
        if (!texts.isEmpty()) {
            forget.accept(texts);
        }
        var soundings = retention.forgetSoundingsBefore(until.minus(Soundings.KEPT));
        var steps = retention.forgetTrailBefore(until.minus(Trail.KEPT));
        if (!closing) {
            last = new Retention.Run(now, until, records, texts.size(), soundings, steps);
            retention.note(last);
        }
    }

    /** Ends behind the record that is just being erased. */
    @Override
    public void close() {
        closing = true;
        thread.shutdown();
        try {
            if (!thread.awaitTermination(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
                LOG.warn("erasing what is past its time did not end in time");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
