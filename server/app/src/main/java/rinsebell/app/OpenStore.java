package rinsebell.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.DataFolder;
import rinsebell.db.FolderInUse;
import rinsebell.db.SalonStore;
import rinsebell.db.StoreBroken;
import rinsebell.db.journal.JournalDamaged;

/**
 * The data folder, held by this process, and the store in it.
 *
 * @param folder where everything lies
 * @param store what was written down
 */
record OpenStore(DataFolder folder, SalonStore store) implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(OpenStore.class);

    /**
     * Opens both.
     *
     * @throws CannotStart when the folder can't be written or is held, or what lies in it does not fit together
     */
    static OpenStore in(Path path, long wallMillis) throws CannotStart {
        DataFolder folder = folder(path);
        try {
            return new OpenStore(folder, SalonStore.open(folder, Instant.ofEpochMilli(wallMillis)));
        } catch (IOException | StoreBroken | JournalDamaged e) {
            LOG.error("the store can't be opened", e);
            close(folder);
            throw new CannotStart(
                    "What lies in the data folder " + folder.path() + " can't be read: " + e.getMessage()
                            + ". The journal was left as it is. Keep a copy of the folder, and start with another one by --data.");
        }
    }

    private static DataFolder folder(Path path) throws CannotStart {
        try {
            return DataFolder.open(path);
        } catch (FolderInUse e) {
            throw new CannotStart("Another Rinsebell already works in the data folder " + path.toAbsolutePath()
                    + ". Stop it, or choose another folder with --data.");
        } catch (IOException e) {
            throw new CannotStart("The data folder " + path.toAbsolutePath() + " cannot be written to. "
                    + "Give it to this user, or choose another with --data.");
        }
    }

    private static void close(AutoCloseable what) {
        try {
            what.close();
        } catch (Exception e) {
            LOG.error("{} could not be closed", what.getClass().getSimpleName(), e);
        }
    }

    @Override
    public void close() {
        close(store);
        close(folder);
    }
}
