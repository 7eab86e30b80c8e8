package rinsebell.demo.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rinsebell.app.desk.PressMemory;
import rinsebell.db.codec.PressLines;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalPress;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;

/**
 * The real journal on a disk that fails, and in place of the database a map: it holds presses that were answered, and gets
 * from the journal at each start what it lacks, as the real one does.
 */
final class Book implements Ledger {
    private final Journal journal;
    private final Map<String, Entry> database;
    private final List<Entry> read;
    private final Parts parts;
    private final Consumer<Crash.Point> passes;

    private Book(
            Journal journal, Map<String, Entry> database, List<Entry> read, Parts parts, Consumer<Crash.Point> passes) {
        this.journal = journal;
        this.database = database;
        this.read = read;
        this.parts = parts;
        this.passes = passes;
    }

    /** @param passes is told how far a batch has come, and may end it all */
    static Book open(
            Path folder, Platter disk, Map<String, Entry> database, Parts parts, Consumer<Crash.Point> passes) {
        var found = new ArrayList<Entry>();
        try {
            var journal = Journal.open(folder, (press, after) -> found.add(PressLines.read(press.payloads())), disk);
            var read = parts.read(found);
            read.forEach(entry -> database.put(entry.id(), entry));
            return new Book(journal, database, read, parts, passes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every press that counted when it was opened, oldest first. */
    List<Entry> read() {
        return read;
    }

    /** Whether it counted already when this was opened. */
    boolean isRead(String id) {
        return read.stream().anyMatch(entry -> entry.id().equals(id));
    }

    List<Fact> facts() {
        return read.stream().flatMap(entry -> entry.facts().stream()).toList();
    }

    Optional<PressMemory.Stored> find(String id) {
        return Optional.ofNullable(database.get(id))
                .map(entry -> new PressMemory.Stored(entry.payloadHash(), entry.outcome()));
    }

    @Override
    public void append(List<Entry> batch) throws NotSaved {
        passes.accept(Crash.Point.DECIDED);
        var presses = batch.stream()
                .filter(entry -> !entry.facts().isEmpty())
                .map(entry -> new JournalPress(PressLines.of(entry)))
                .toList();
        if (!presses.isEmpty()) {
            write(presses);
        }
        batch.forEach(entry -> database.put(entry.id(), entry));
        passes.accept(Crash.Point.COMMITTED);
    }

    private void write(List<JournalPress> presses) throws NotSaved {
        try {
            journal.append(presses);
        } catch (NotSaved e) {
            if (parts.tellsNotSaved()) {
                throw e;
            }
        }
    }
}
