package rinsebell.db;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.codec.UnreadableFact;
import rinsebell.db.journal.JournalMark;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.Stream;
import rinsebell.floor.TextId;

/** What is in the database, as a whole: each batch in one transaction. */
final class Tables {

    private static final Logger LOG = LoggerFactory.getLogger(Tables.class);
    private static final String FORCE = "checkpoint sync";
    private static final String BEFORE_HISTORY = "before_history";

    private final Database database;

    Tables(Database database) {
        this.database = database;
    }

    Database database() {
        return database;
    }

    JournalMark mark() {
        return database.with(MarkTable::read);
    }

    /**
     * Writes presses that the journal has. Those that are there already are left out: nobody knows of a transaction
     * that ended in an error whether it counts.
     *
     * @param after the place in the journal behind the last of them
     */
    void apply(List<Entry> entries, JournalMark after) {
        database.inTransactionAtOnce(handle -> {
            long reached = MarkTable.read(handle).lines();
            write(
                    handle,
                    entries.stream().filter(entry -> isNew(entry, reached)).toList());
            MarkTable.write(handle, after);
            return after;
        });
    }

    private static boolean isNew(Entry entry, long reached) {
        return entry.facts().isEmpty() || entry.facts().get(0).seq() > reached;
    }

    private static void write(Handle handle, List<Entry> entries) {
        PressTable.write(handle, entries);
        FactTable.write(handle, entries);
        TextTable.write(handle, entries);
        ClientTable.reserve(handle, facts(entries));
        writeHistory(handle, facts(entries));
    }

    private static List<Fact> facts(List<Entry> entries) {
        return entries.stream().flatMap(entry -> entry.facts().stream()).toList();
    }

    /** Rows that can be made again at any time must not keep facts out of the database. */
    private static void writeHistory(Handle handle, Collection<Fact> facts) {
        handle.savepoint(BEFORE_HISTORY);
        try {
            History.write(handle, Touched.by(handle, facts));
            handle.releaseSavepoint(BEFORE_HISTORY);
        } catch (RuntimeException e) {
            handle.rollbackToSavepoint(BEFORE_HISTORY);
            LOG.error("the rows of some visits could not be written; their facts are kept", e);
        }
    }

    Optional<AnsweredPress> press(String id) {
        return database.with(handle -> PressTable.find(handle, id));
    }

    Map<TextId, String> texts(Collection<TextId> ids) {
        return database.with(handle -> TextTable.find(handle, ids));
    }

    void addMissing(Collection<WaitingTexts.Line> texts) {
        database.inTransaction(handle -> {
            texts.forEach(text -> TextTable.addMissing(handle, text));
            return texts;
        });
    }

    List<Fact> live() {
        return database.with(Live::facts);
    }

    List<Fact> facts(Collection<? extends Stream> streams) {
        return database.with(handle -> FactTable.in(handle, streams));
    }

    List<Fact> facts(LocalDate day) {
        return database.with(handle -> EarlierDay.facts(handle, day));
    }

    List<Fact> facts(LocalDate from, LocalDate to) {
        return database.with(handle -> FactTable.ofDays(handle, from, to));
    }

    List<Pressed> pressed(Instant from, Instant until) {
        return database.with(handle -> FactTable.recorded(handle, from, until).stream()
                .map(row -> new Pressed(row.fact(), row.press(), row.answered().device()))
                .toList());
    }

    Optional<Rebuild> lastRebuild() {
        return database.with(RebuildTable::last);
    }

    void note(Rebuild rebuild) {
        database.with(handle -> {
            RebuildTable.write(handle, rebuild);
            return rebuild;
        });
    }

    /** Takes away what the journal tells, and keeps what stands nowhere else: texts, client records, refused presses. */
    void forgetFacts() {
        database.inTransaction(handle -> {
            FactTable.clear(handle);
            VisitTable.clear(handle);
            MarkTable.write(handle, JournalMark.START);
            return handle;
        });
    }

    /** Erases what was erased before; a copy from an earlier time brought it back. */
    void erase(Collection<Erasures.Erasure> erased) {
        database.inTransaction(handle -> {
            erased.forEach(one -> {
                Optional.ofNullable(one.client()).ifPresent(client -> {
                    ClientTable.delete(handle, client);
                    ClientTable.reserve(handle, client.value());
                });
                TextTable.delete(handle, one.texts());
            });
            return erased;
        });
    }

    /**
     * Reads all that a start needs.
     *
     * @throws DatabaseUnreadable if that can't be done, or the tables do not hold what they say
     * @throws StoreBroken if they hold facts that this version of the program does not know
     * @throws IOException if the system refused something
     */
    void check() throws IOException, DatabaseUnreadable {
        try {
            long facts = database.with(FactTable::count);
            if (facts != mark().lines()) {
                throw new DatabaseUnreadable("the database says " + mark().lines() + " facts and holds " + facts);
            }
            live();
        } catch (DatabaseAway e) {
            Database.refusePassing(e);
            throw new DatabaseUnreadable(e);
        } catch (UnreadableFact e) {
            throw new StoreBroken("a fact in the database can't be read: " + e.getMessage(), e);
        }
    }

    /** Returns when everything written so far would survive the power going. */
    void force() {
        database.with(handle -> handle.execute(FORCE));
    }

    /** The same, without waiting while the file is being compacted. */
    void forceAtOnce() {
        database.inTransactionAtOnce(handle -> handle.execute(FORCE));
    }
}
