package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.h2.mvstore.MVStoreException;
import org.h2.mvstore.MVStoreTool;
import rinsebell.db.journal.Forced;

/**
 * Writes the database's file anew with only what is still in the tables. What was erased stays readable in the bytes of
 * the old one, since H2 never writes over a page but lets go of it.
 */
final class Compaction {

    /** What H2 calls a file until it is whole. */
    private static final String UNFINISHED = ".tempFile";

    private final DataFolder folder;

    Compaction(DataFolder folder) {
        this.folder = folder;
    }

    /**
     * Under another name until it is whole and on disk, and then in one step under its own: whenever the power goes,
     * the folder has the one file or the other.
     *
     * @throws IOException if that can't be done; then the file is as it was
     */
    void compact(Database database) throws IOException {
        Room.refuseLast(folder, 2);
        try {
            database.whileShut(name -> compact());
        } catch (MVStoreException e) {
            throw new IOException("the database can't be compacted: " + e.getMessage(), e);
        } finally {
            clear(folder);
        }
    }

    private void compact() throws IOException {
        Path next = folder.newDatabaseFile();
        Files.copy(folder.databaseFile(), next, StandardCopyOption.REPLACE_EXISTING);
        // Compressed, nobody could see in its bytes that something is gone.
        MVStoreTool.compact(next.toString(), false);
        Forced.file(next);
        Files.move(next, folder.databaseFile(), StandardCopyOption.ATOMIC_MOVE);
        Forced.folder(folder.path());
    }

    /** What a compaction left that was broken off; it would keep what is erased later. */
    static void clear(DataFolder folder) throws IOException {
        Files.deleteIfExists(folder.newDatabaseFile());
        Files.deleteIfExists(Path.of(folder.newDatabaseFile() + UNFINISHED));
    }
}
