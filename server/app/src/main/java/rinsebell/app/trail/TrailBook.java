package rinsebell.app.trail;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.DatabaseAway;
import rinsebell.db.Trail.Step;

/** Writes the trail. What was done already and can't be written waits in memory, and goes with the next. */
final class TrailBook {
    private static final Logger LOG = LoggerFactory.getLogger(TrailBook.class);
    private static final Duration DAY = Duration.ofDays(1);
    private static final int BAD_REQUEST = 400;

    /** So many may wait. */
    static final int MOST_WAITING = 1_000;

    /** More than a salon's people mistype in a day; nobody may fill the disk by guessing. */
    static final int MOST_REFUSED_A_DAY = 2_000;

    private final Consumer<List<Step>> write;
    private final List<Step> waiting = new ArrayList<>();
    private Instant countedFrom = Instant.MIN;
    private int refused;

    /** @param write writes all of them, in their order, or none */
    TrailBook(Consumer<List<Step>> write) {
        this.write = write;
    }

    /**
     * Writes what somebody looked at; it is on disk when this returns.
     *
     * @throws DatabaseAway if it can't be written: then it may not be shown
     */
    synchronized void keep(Step step) {
        var all = new ArrayList<>(waiting);
        all.add(step);
        write.accept(all);
        waiting.clear();
    }

    /** Writes what somebody did, as soon as that can be. */
    synchronized void keepSoon(Step step) {
        if (step.status() >= BAD_REQUEST && isTooOften(step.at())) {
            return;
        }
        try {
            keep(step);
        } catch (DatabaseAway e) {
            wait(step, e);
        }
    }

    private void wait(Step step, DatabaseAway why) {
        if (waiting.size() < MOST_WAITING) {
            waiting.add(step);
        }
        LOG.error("{} rows of the trail wait for the database: {}", waiting.size(), why.getMessage());
    }

    private boolean isTooOften(Instant now) {
        if (now.isBefore(countedFrom) || !now.isBefore(countedFrom.plus(DAY))) {
            countedFrom = now;
            refused = 0;
        }
        if (++refused == MOST_REFUSED_A_DAY + 1) {
            LOG.warn("more was refused today than the trail keeps");
        }
        return refused > MOST_REFUSED_A_DAY;
    }
}
