package rinsebell.app.copy;

import java.io.IOException;
import java.time.Instant;
import java.util.function.BooleanSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.Compactions;

/**
 * When the database's file is compacted: once something was erased, as soon as nobody has anything on, and after some
 * rounds all the same. One that fails is tried again with the next hour's copy.
 */
public final class Compacting {

    /** For how many rounds of a minute it waits for a quiet floor. */
    static final int MOST_ROUNDS = 10;

    private static final Logger LOG = LoggerFactory.getLogger(Compacting.class);

    private final Compactions compactions;
    private final BooleanSupplier quiet;
    private Instant failed = Instant.EPOCH;
    private int waited;

    /** @param quiet whether nobody has anything on */
    public Compacting(Compactions compactions, BooleanSupplier quiet) {
        this.compactions = compactions;
        this.quiet = quiet;
    }

    /** Whether this is the round for it. */
    boolean isNow(Instant now) throws IOException {
        if (!compactions.isDue() || isTooSoon(now)) {
            waited = 0;
            return false;
        }
        return quiet.getAsBoolean() || waited++ >= MOST_ROUNDS;
    }

    /** A failure that seems to come from later was one of a wrong clock. */
    private boolean isTooSoon(Instant now) {
        return now.isBefore(failed.plus(HourlyCopies.APART)) && !failed.isAfter(now);
    }

    void compact(Instant now) {
        waited = 0;
        try {
            compactions.compact(now);
            LOG.info("the database's file was written anew without what was erased");
        } catch (IOException | RuntimeException e) {
            LOG.error("the database's file could not be compacted, and it is tried again: {}", e.getMessage());
            failed = now;
        }
    }
}
