package rinsebell.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Writes the database's file anew when something was erased, so that its bytes do not hold it any more. Presses go on
 * meanwhile: they count by the journal, and wait for the tables; whether one came before is known by its id. Whoever
 * wants to read waits. One thread compacts.
 */
public final class Compactions {

    private static final Logger LOG = LoggerFactory.getLogger(Compactions.class);

    private final DataFolder folder;
    private final Database database;
    private final Runnable settle;
    private final Erasures erasures;
    private volatile PressIds ids = PressIds.UNKNOWN;

    /** @param settle returns when all that waited for the tables is in them */
    Compactions(DataFolder folder, Database database, Runnable settle, Erasures erasures) {
        this.folder = folder;
        this.database = database;
        this.settle = settle;
        this.erasures = erasures;
    }

    /**
     * Whether something was erased since the file was compacted last.
     *
     * @throws IOException if that can't be told
     */
    public boolean isDue() throws IOException {
        return erasures.all().size() > database.with(RetentionTable::erasuresCompacted);
    }

    /** When the file was compacted last; empty for never. */
    public Optional<Instant> last() {
        return database.with(RetentionTable::lastCompaction);
    }

    /**
     * Compacts.
     *
     * @param now only noted
     * @throws IOException if that can't be done; then the file is as it was
     */
    public void compact(Instant now) throws IOException {
        try {
            settle.run();
            long erased = erasures.all().size();
            ids = database.with(PressIds::read);
            new Compaction(folder).compact(database);
            database.inTransaction(handle -> {
                RetentionTable.compacted(handle, now, erased);
                return handle;
            });
        } catch (DatabaseAway | UncheckedIOException e) {
            throw new IOException(e.getMessage(), e);
        } finally {
            ids = PressIds.UNKNOWN;
            takeIn();
        }
    }

    private void takeIn() {
        try {
            settle.run();
        } catch (DatabaseAway | UncheckedIOException e) {
            LOG.error("presses that came meanwhile wait for the tables: {}", e.getMessage());
        }
    }

    /** Whether the tables can't be asked for a press just now, and surely have none of that id. */
    boolean lack(String press) {
        return database.isShut() && ids.lack(press);
    }
}
