package rinsebell.db;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.codec.UnreadableFact;
import rinsebell.db.journal.Journal;

/** Brings journal and database to one state at the start, and makes the database again where it is lost. */
final class Opening {

    private static final Logger LOG = LoggerFactory.getLogger(Opening.class);

    private final DataFolder folder;
    private final Instant now;

    Opening(DataFolder folder, Instant now) {
        this.folder = folder;
        this.now = now;
    }

    SalonStore store() throws IOException {
        if (isDatabaseLost()) {
            rebuild(new Rebuild(now, "the database file was missing or empty", null));
        }
        try {
            probe();
            return attempt();
        } catch (DatabaseUnreadable e) {
            rebuild(new Rebuild(now, e.reason(), free()));
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
            return new SalonStore(folder, database, tables, caughtUp(tables));
        } catch (IOException | RuntimeException | DatabaseUnreadable e) {
            database.close();
            throw e;
        }
    }

    private Journal caughtUp(Tables tables) throws IOException {
        CatchUp catchUp = new CatchUp(tables);
        Journal journal = opened(catchUp);
        try {
            catchUp.finish();
            return journal;
        } catch (RuntimeException e) {
            journal.close();
            throw e;
        }
    }

    private Journal opened(CatchUp catchUp) throws IOException {
        try {
            return Journal.open(folder.journal(), catchUp);
        } catch (UnreadableFact e) {
            throw new StoreBroken("a fact in the journal can't be read: " + e.getMessage(), e);
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

    /**
     * Beside the old one until it is whole: a start that is broken off begins again, and one that fails leaves
     * everything as it was.
     */
    private void rebuild(Rebuild why) throws IOException {
        LOG.error("the database is made again from the journal: {}", why.reason());
        Files.deleteIfExists(folder.newDatabaseFile());
        try {
            fill(why);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(folder.newDatabaseFile());
            throw e;
        }
        if (why.kept().isPresent()) {
            Files.move(folder.databaseFile(), why.kept().get());
        }
        Files.deleteIfExists(folder.databaseFile());
        Files.move(folder.newDatabaseFile(), folder.databaseFile());
    }

    private void fill(Rebuild why) throws IOException {
        try (Database database = Database.open(folder.newDatabase())) {
            Tables tables = new Tables(database);
            tables.note(why);
            caughtUp(tables).close();
        } catch (DatabaseUnreadable e) {
            throw new IOException("no database can be made in " + folder.path(), e);
        }
    }
}
