package rinsebell.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import rinsebell.db.codec.PressLines;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalPress;
import rinsebell.db.journal.JournalReader;
import rinsebell.floor.Ledger.NotSaved;

/** Makes a data folder from a copy alone, or from another data folder; a server can be started on it then. */
public final class Restore {

    private static final int TOGETHER = 500;

    /** What belongs to whoever works in a folder, or is only kept there for a look. */
    /** Of a copied folder nobody knows which devices were thrown out since. */
    private static final Set<String> NOT_TAKEN = Set.of("in-use.lock", "in-use.txt", "set-aside", DataFolder.KEYRING);

    private final Path into;
    private final Instant now;

    private Restore(Path into, Instant now) {
        this.into = into;
        this.now = now;
    }

    /**
     * Restores. What was begun is taken away again when it fails.
     *
     * @param from a copy, or a data folder in which no server works
     * @param into a folder that is empty or not there yet
     * @param now when that was, which the restored folder tells
     * @return what is in it
     * @throws NotRestored if the one holds nothing to restore or the other is not empty
     * @throws CopyUnreadable if the copy is damaged or no copy
     * @throws FolderInUse if a server works in one of the folders
     * @throws IOException if the disk can't be read or written
     */
    public static Contents restore(Path from, Path into, Instant now) throws IOException, NotRestored, CopyUnreadable {
        refuseUnfit(from, into);
        try {
            return new Restore(into, now).from(from);
        } catch (IOException | RuntimeException | CopyUnreadable e) {
            empty(into);
            throw e;
        }
    }

    private static void empty(Path into) throws IOException {
        try (Stream<Path> all = Files.walk(into)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                if (!one.equals(into)) {
                    Files.delete(one);
                }
            }
        }
    }

    private static void refuseUnfit(Path from, Path into) throws IOException, NotRestored {
        if (!Files.exists(from)) {
            throw new NotRestored("There is no copy and no data folder at " + from.toAbsolutePath() + ".");
        }
        if (Files.isDirectory(from) && !Files.isDirectory(from.resolve("journal"))) {
            throw new NotRestored("The folder " + from.toAbsolutePath() + " is no data folder: it holds no journal.");
        }
        if (into.toAbsolutePath().normalize().startsWith(from.toAbsolutePath().normalize())) {
            throw new NotRestored("The new folder can't lie inside the one that is restored.");
        }
        if (Files.exists(into) && !(Files.isDirectory(into) && list(into).isEmpty())) {
            throw new NotRestored("The folder " + into.toAbsolutePath() + " is not empty. Name one that is not there "
                    + "yet, so that nothing is written over.");
        }
    }

    private Contents from(Path from) throws IOException, CopyUnreadable {
        try (DataFolder folder = DataFolder.open(into)) {
            if (Files.isDirectory(from)) {
                takeFolder(from, folder);
            } else {
                takeCopy(from, folder);
            }
            try (SalonStore store = SalonStore.open(folder, now)) {
                return store.tables().database().with(Contents::of);
            }
        }
    }

    private static void takeFolder(Path from, DataFolder folder) throws IOException {
        try (DataFolder held = DataFolder.open(from)) {
            for (Path file : list(held.path())) {
                if (!NOT_TAKEN.contains(file.getFileName().toString())) {
                    take(file, held.path(), folder.path());
                }
            }
        }
    }

    private static void take(Path file, Path from, Path into) throws IOException {
        try (Stream<Path> all = Files.walk(file)) {
            for (Path one : all.toList()) {
                Files.copy(one, into.resolve(from.relativize(one)));
            }
        }
    }

    /** The journal is written anew: a copy holds every fact and every press, but not the journal's lines. */
    private void takeCopy(Path copy, DataFolder folder) throws IOException, CopyUnreadable {
        try (Database database = CopyTables.loaded(copy, folder.database())) {
            Tables tables = new Tables(database);
            tables.erase(knownErasures(copy));
            Contents contents = database.with(Contents::of);
            tables.note(new Rebuild(
                    now,
                    "restored from a copy",
                    null,
                    Rebuild.Source.COPY_ALONE,
                    Objects.requireNonNullElse(contents.newest(), now),
                    0));
            writeJournal(database, folder);
        }
    }

    /** A copy that still lies in its data folder is told what was erased there since. */
    private static List<Erasures.Erasure> knownErasures(Path copy) throws IOException {
        Path beside = copy.toAbsolutePath().resolve("../..").normalize();
        return new Erasures(beside.resolve(DataFolder.ERASURES)).all();
    }

    private static void writeJournal(Database database, DataFolder folder) throws IOException {
        try (Journal journal = Journal.open(folder.journal(), JournalReader.NONE)) {
            List<JournalPress> presses = new ArrayList<>();
            database.with(handle -> {
                FactTable.eachPress(handle, entry -> {
                    presses.add(new JournalPress(PressLines.of(entry)));
                    if (presses.size() >= TOGETHER) {
                        append(journal, presses);
                    }
                });
                append(journal, presses);
                MarkTable.write(handle, journal.end());
                return journal;
            });
        }
    }

    private static void append(Journal journal, List<JournalPress> presses) {
        try {
            if (!presses.isEmpty()) {
                journal.append(List.copyOf(presses));
                presses.clear();
            }
        } catch (NotSaved e) {
            throw new UncheckedIOException(new IOException(e.getMessage(), e));
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
