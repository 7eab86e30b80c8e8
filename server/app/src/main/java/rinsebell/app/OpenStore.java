package rinsebell.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.DataFolder;
import rinsebell.db.DatabaseAway;
import rinsebell.db.FolderInUse;
import rinsebell.db.Keyring;
import rinsebell.db.SalonStore;
import rinsebell.db.StoreBroken;
import rinsebell.db.journal.JournalDamaged;

/**
 * The data folder, held by this process, and the store in it.
 *
 * @param folder where everything lies
 * @param store what was written down
 * @param keyring the devices that are in, and PINs
 */
record OpenStore(DataFolder folder, SalonStore store, Keyring keyring) implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(OpenStore.class);

    /**
     * Opens both.
     *
     * @throws CannotStart when the folder can't be written or is held, or what lies in it does not fit together
     */
    static OpenStore in(Path path, long wallMillis) throws CannotStart {
        DataFolder folder = folder(path);
        try {
            Keyring keyring = Keyring.open(folder);
            return new OpenStore(folder, SalonStore.open(folder, Instant.ofEpochMilli(wallMillis)), keyring);
        } catch (FolderInUse e) {
            close(folder);
            throw inUse(path);
        } catch (IOException | RuntimeException e) {
            LOG.debug("the store can't be opened", e);
            close(folder);
            throw new CannotStart("What lies in the data folder " + folder.path() + " can't be used: " + reason(e)
                    + ". The journal was left as it is. Keep a copy of the folder, "
                    + "and start with another one by --data.");
        }
    }

    /** What this program does not expect is only named: its message may quote what somebody typed. */
    private static String reason(Exception e) {
        if (e instanceof AccessDeniedException denied) {
            return "this user may not read and write " + denied.getFile();
        }
        boolean isTold = e instanceof IOException
                || e instanceof StoreBroken
                || e instanceof JournalDamaged
                || e instanceof DatabaseAway;
        return isTold
                ? Objects.requireNonNullElse(e.getMessage(), e.toString())
                : "a mistake in this program (" + e.getClass().getSimpleName() + ")";
    }

    private static CannotStart inUse(Path path) {
        return new CannotStart("Another Rinsebell already works in the data folder " + path.toAbsolutePath()
                + ". Stop it, or choose another folder with --data.");
    }

    private static DataFolder folder(Path path) throws CannotStart {
        try {
            return DataFolder.open(path);
        } catch (FolderInUse e) {
            throw inUse(path);
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
