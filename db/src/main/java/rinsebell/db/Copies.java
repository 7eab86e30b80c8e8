package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import rinsebell.db.journal.Forced;

/**
 * Copies of the tables, made while presses go on being written: what stands nowhere else (labels, notes, client records)
 * comes from one of them if the database should be lost. One thread makes them.
 */
public final class Copies {

    /** No copy, and no database that was set aside, is kept for longer while a server runs. */
    public static final Duration KEPT = Copy.OLDEST_KEPT;

    private static final String UNFINISHED = "unfinished";

    private final DataFolder folder;
    private final Database database;

    Copies(DataFolder folder, Database database) {
        this.folder = folder;
        this.database = database;
    }

    /** When the newest was made. */
    public Optional<Instant> newest() throws IOException {
        return Copy.in(folder.copies()).stream().findFirst().map(Copy::at);
    }

    /**
     * Makes a copy of everything as it is at one moment, and deletes those that are kept no longer. It is whole, on
     * disk and has been read again when this returns.
     *
     * @param now what it is named after, in UTC
     * @throws IOException if there is no room, or the disk or the database does not answer; then nothing is left of it
     */
    public void make(Instant now) throws IOException {
        Files.createDirectories(folder.copies());
        Room.refuseLast(folder, 1);
        Path unfinished = folder.copies().resolve(UNFINISHED);
        try {
            Files.deleteIfExists(unfinished);
            finish(unfinished, write(unfinished), now.truncatedTo(ChronoUnit.SECONDS));
        } catch (DatabaseAway | CopyUnreadable e) {
            throw new IOException("a copy could not be written: " + e.getMessage(), e);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    /** Serializable here means that all tables are seen as they were at its beginning; nobody waits for it. */
    private long write(Path unfinished) {
        return database.inTransaction(TransactionIsolationLevel.SERIALIZABLE, handle -> write(handle, unfinished));
    }

    private static long write(Handle handle, Path unfinished) {
        long facts = MarkTable.read(handle).lines();
        CopyScript.write(handle, unfinished);
        return facts;
    }

    private void finish(Path unfinished, long facts, Instant now) throws IOException, CopyUnreadable {
        Forced.file(unfinished);
        CopyScript.verify(unfinished);
        Files.move(unfinished, Copy.named(folder.copies(), now, facts).file(), StandardCopyOption.ATOMIC_MOVE);
        Forced.folder(folder.copies());
        deleteExpired(Copy.in(folder.copies()), now);
        deleteSetAside(now.minus(KEPT));
    }

    /** What was erased since is in them as well, and nobody needs them longer than copies. */
    private void deleteSetAside(Instant before) throws IOException {
        if (Files.isDirectory(folder.setAside())) {
            try (Stream<Path> files = Files.list(folder.setAside())) {
                for (Path file : files.toList()) {
                    if (Files.getLastModifiedTime(file).toInstant().isBefore(before)) {
                        Files.deleteIfExists(file);
                    }
                }
            }
        }
    }

    private static void deleteExpired(List<Copy> copies, Instant now) throws IOException {
        for (Copy copy : Copy.expired(copies, now)) {
            Files.deleteIfExists(copy.file());
        }
    }
}
