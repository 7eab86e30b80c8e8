package rinsebell.db;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rinsebell.floor.TextId;
import rinsebell.floor.visit.ClientId;

/**
 * What is past its time, for whoever erases it. A clock that is years ahead must not erase everything, and nobody can
 * tell it from a right one while it goes on evenly; so the time that is reckoned with goes on at most {@link #STEP} from
 * one run to the next. A salon that was closed for a month catches up within days.
 */
public final class Retention {

    /** Common practice, no source. */
    public static final Duration STEP = Duration.ofDays(7);

    private static final int NEWEST = 1;

    private final Tables tables;
    private final Runnable settle;
    private final Erasures erasures;

    /**
     * One time that it was done.
     *
     * @param at when
     * @param until the time that was reckoned with
     * @param records how many records of clients were erased
     * @param texts how many labels and notes of visits without a record
     * @param soundings how many rows of what devices sounded
     * @param steps how many rows of who looked at what
     */
    public record Run(Instant at, Instant until, int records, int texts, int soundings, int steps) {}

    /** @param settle returns when every text so far is in the tables and nowhere else */
    Retention(Tables tables, Runnable settle, Erasures erasures) {
        this.tables = tables;
        this.settle = settle;
        this.erasures = erasures;
    }

    /** The last times it was done, the newest first. */
    public List<Run> last(int most) {
        return tables.database().with(handle -> RetentionTable.last(handle, most));
    }

    /**
     * The time to reckon with: now, but no more than {@link #STEP} after the last run, or after the first fact where
     * there was none. Empty while the salon has no facts.
     */
    public Optional<Instant> until(Instant now) {
        return last(NEWEST).stream()
                .findFirst()
                .map(Run::until)
                .or(() -> tables.database().with(RetentionTable::firstFact))
                .map(before -> before.plus(STEP))
                .map(limit -> limit.isBefore(now) ? limit : now);
    }

    /**
     * Records that nothing was added to since an instant; those of people who are here are not among them.
     *
     * @param until the time that is reckoned with: a record that is met for the first time counts from then
     */
    public List<ClientId> untouchedSince(Instant before, Instant until) {
        return tables.database().inTransaction(handle -> {
            ClientTable.meet(handle, until);
            return ClientTable.untouchedSince(handle, before);
        });
    }

    /**
     * Erases labels and notes of visits that ended before an instant and belong to no record. They are off the disk's
     * tables when this returns, and no copy brings them back into this folder.
     */
    public Set<TextId> eraseTextsBefore(Instant before) {
        settle.run();
        Set<TextId> gone = tables.database().inTransaction(handle -> {
            Set<TextId> texts = TextTable.ofNobodyBefore(handle, before);
            if (!texts.isEmpty()) {
                TextTable.delete(handle, texts);
                note(texts);
            }
            return texts;
        });
        tables.force();
        return gone;
    }

    /** Before the transaction counts: one erasure noted too many is only erased once more. */
    private void note(Set<TextId> texts) {
        try {
            erasures.add(null, texts);
        } catch (IOException e) {
            throw new DatabaseAway(e);
        }
    }

    /** Forgets what devices sounded before an instant. */
    public int forgetSoundingsBefore(Instant before) {
        return tables.database().inTransaction(handle -> SoundedTable.forget(handle, before));
    }

    /** Forgets who looked at what before an instant; the rest stays one chain. */
    public int forgetTrailBefore(Instant before) {
        return tables.database().inTransaction(handle -> TrailTable.forget(handle, before));
    }

    /** Writes down that it was done. */
    public void note(Run run) {
        tables.database().inTransaction(handle -> {
            RetentionTable.write(handle, run);
            return run;
        });
    }
}
