package rinsebell.db;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import rinsebell.db.journal.Journal;

/** Brings journal and database to one state at the start, and makes the database again where it is lost. */
final class Opening {

    private final DataFolder folder;
    private final Instant now;

    Opening(DataFolder folder, Instant now) {
        this.folder = folder;
        this.now = now;
    }

    SalonStore store() throws IOException {
        Compaction.clear(folder);
        if (isDatabaseLost()) {
            new Rebuilding(folder).rebuild(new Rebuild(now, "the database file was missing or empty", null));
        }
        try {
            probe();
            return attempt();
        } catch (DatabaseUnreadable e) {
            new Rebuilding(folder).rebuild(new Rebuild(now, e.reason(), free()));
            return second();
        }
    }

    /** A damaged file is set aside as it is: opening it would change it. */
    private void probe() throws IOException, DatabaseUnreadable {
        Path file = folder.databaseFile();
        if (Files.isRegularFile(file) && Files.size(file) > 0) {
            if (!Files.isWritable(file)) {
                throw new AccessDeniedException(file.toString());
            }
            Probe.read(folder.database());
        }
    }

    private SalonStore second() throws IOException {
        try {
            return attempt();
        } catch (DatabaseUnreadable e) {
            throw new IOException("the database was made again and still can't be read", e);
        }
    }

    private SalonStore attempt() throws IOException, DatabaseUnreadable {
        Database database = Database.open(folder.database());
        try {
            Tables tables = new Tables(database);
            tables.check();
            return new SalonStore(folder, database, tables, CatchUp.journal(folder, tables));
        } catch (IOException | RuntimeException | DatabaseUnreadable e) {
            database.close();
            throw e;
        }
    }

    private boolean isDatabaseLost() throws IOException {
        Path file = folder.databaseFile();
        boolean nothing = !Files.exists(file) || Files.size(file) == 0;
        return nothing && Journal.verify(folder.journal()).presses() > 0;
    }

    /** Where the database will be set aside. */
    private Path free() throws IOException {
        Files.createDirectories(folder.setAside());
        int number = 1;
        while (Files.exists(folder.setAside(number))) {
            number++;
        }
        return folder.setAside(number);
    }
}
