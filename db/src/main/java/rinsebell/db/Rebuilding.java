package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalMark;

/**
 * Makes a database again. Facts and rows are always what the journal tells; from a copy comes only what stands nowhere
 * else: texts, client records, and presses that were refused.
 */
final class Rebuilding {

    private static final Logger LOG = LoggerFactory.getLogger(Rebuilding.class);

    private final DataFolder folder;

    Rebuilding(DataFolder folder) {
        this.folder = folder;
    }

    /**
     * Beside the old one until it is whole: a start that is broken off begins again, and one that fails leaves
     * everything as it was.
     *
     * @throws StoreBroken if a later version of the program wrote the journal
     * @throws IOException if the disk can't be read or written
     */
    void rebuild(Rebuild why) throws IOException {
        LOG.error("the database is made again: {}", why.reason());
        try {
            fill(why);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(folder.newDatabaseFile());
            throw e;
        }
        if (why.kept().isPresent()) {
            Path kept = why.kept().get();
            Files.move(folder.databaseFile(), kept);
            // From then on it is kept as long as a copy is.
            Files.setLastModifiedTime(kept, FileTime.from(why.at()));
        }
        Files.deleteIfExists(folder.databaseFile());
        Files.move(folder.newDatabaseFile(), folder.databaseFile());
    }

    /** From the newest copy that can be read and fits the journal, or without one. */
    private void fill(Rebuild why) throws IOException {
        Rebuild told = why;
        long journal = Journal.verify(folder.journal()).end().lines();
        for (Copy copy : Copy.in(folder.copies())) {
            try {
                fromCopy(copy, told.with(copy));
                return;
            } catch (CopyUnreadable e) {
                LOG.error("the copy {} is not used: {}", copy.file(), e.getMessage());
                told = told.lacking(copy.facts() - journal);
            }
        }
        fromJournal(told);
    }

    private void fromCopy(Copy copy, Rebuild told) throws IOException, CopyUnreadable {
        Files.deleteIfExists(folder.newDatabaseFile());
        try (Database database = CopyTables.loaded(copy.file(), folder.newDatabase())) {
            Tables tables = new Tables(database);
            refuseOther(tables.mark());
            tables.forgetFacts();
            finish(tables, told);
        }
    }

    /** The numbers by which texts are kept are those of this journal's lines only if the copy belongs to it. */
    private void refuseOther(JournalMark mark) throws IOException, CopyUnreadable {
        if (!Journal.holds(folder.journal(), mark)) {
            throw new CopyUnreadable("its " + mark.lines() + " facts are not the first of this journal");
        }
    }

    private void fromJournal(Rebuild told) throws IOException {
        Files.deleteIfExists(folder.newDatabaseFile());
        try (Database database = Database.open(folder.newDatabase())) {
            finish(new Tables(database), told);
        } catch (DatabaseUnreadable e) {
            throw new IOException("no database can be made in " + folder.path(), e);
        }
    }

    private void finish(Tables tables, Rebuild told) throws IOException {
        CatchUp.journal(folder, tables).close();
        tables.erase(new Erasures(folder.erasures()).all());
        tables.note(told);
    }
}
