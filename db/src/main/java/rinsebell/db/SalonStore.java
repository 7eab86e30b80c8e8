package rinsebell.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.db.codec.PressLines;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalPress;
import rinsebell.db.journal.Recovered;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;
import rinsebell.floor.Stream;
import rinsebell.floor.TextId;

/**
 * Everything a salon wrote down, in one data folder: the ledger that presses are made durable in, and what can be asked
 * of it. One thread appends; any thread may ask.
 */
public final class SalonStore implements Ledger, AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(SalonStore.class);

    /** Forcing the database costs more than a press should, so it is done once for many texts. */
    private static final long TEXTS_FULL_AT_BYTES = 64 << 10;

    private final DataFolder folder;
    private final Database database;
    private final Tables tables;
    private final Journal journal;
    private final WaitingTexts waitingTexts;
    private final Compactions compactions;

    /** Presses that count and that the database has not taken yet; empty but for bad times. */
    private volatile List<Entry> behind = List.of();

    SalonStore(DataFolder folder, Database database, Tables tables, Journal journal) throws IOException {
        this.folder = folder;
        this.database = database;
        this.tables = tables;
        this.journal = journal;
        this.compactions = new Compactions(folder, database, this::settle, erasures());
        tables.addMissing(WaitingTexts.read(folder.waitingTexts()));
        this.waitingTexts = WaitingTexts.open(folder.waitingTexts());
        emptyWaitingTexts();
    }

    /**
     * Opens the store in a folder: reads the journal from end to end, cuts off what was never answered, writes into the
     * database what it lacks, and makes the database again if it can't be read, from the journal and the newest copy
     * that fits it.
     *
     * @param folder stays the caller's to close, after the store
     * @param now only noted, if the database had to be made again
     * @throws rinsebell.db.journal.JournalDamaged if the journal does not fit together
     * @throws StoreBroken if journal and database do not fit together, or a later version of the program wrote them
     * @throws IOException if the disk can't be read or written
     */
    public static SalonStore open(DataFolder folder, Instant now) throws IOException {
        return new Opening(folder, now).store();
    }

    @Override
    public synchronized void append(List<Entry> batch) throws NotSaved {
        boolean interrupted = Thread.interrupted();
        try {
            save(batch);
            catchUp(together(behind, batch));
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Texts first: a fact whose label is lost would be worse than a label whose fact never came to be. */
    private void save(List<Entry> batch) throws NotSaved {
        List<JournalPress> presses = batch.stream()
                .filter(entry -> !entry.facts().isEmpty())
                .map(entry -> new JournalPress(PressLines.of(entry)))
                .toList();
        refuseOtherNumbers(batch);
        try {
            waitingTexts.keep(batch);
        } catch (IOException e) {
            throw new NotSaved("the texts could not be written: " + e.getMessage(), e);
        }
        if (!presses.isEmpty()) {
            journal.append(presses);
        }
    }

    private void refuseOtherNumbers(List<Entry> batch) {
        long next = journal.end().lines() + 1;
        for (Entry entry : batch) {
            for (Fact fact : entry.facts()) {
                if (fact.seq() != next++) {
                    throw new IllegalArgumentException(
                            "facts are numbered without gaps: " + (next - 1) + " comes next, not " + fact);
                }
            }
        }
    }

    private static List<Entry> together(List<Entry> first, List<Entry> then) {
        List<Entry> all = new ArrayList<>(first);
        all.addAll(then);
        return List.copyOf(all);
    }

    private void catchUp(List<Entry> missing) {
        behind = missing;
        try {
            tables.apply(missing, journal.end());
            behind = List.of();
            if (waitingTexts.length() >= TEXTS_FULL_AT_BYTES) {
                emptyWaitingTexts();
            }
        } catch (IOException | RuntimeException e) {
            LOG.error(
                    "{} presses are saved and not yet in the database, and it is tried again: {}",
                    behind.size(),
                    e.getMessage());
        }
    }

    private void emptyWaitingTexts() throws IOException {
        if (waitingTexts.length() > 0) {
            tables.forceAtOnce();
            waitingTexts.empty();
        }
    }

    /** A text that still waited in its file would come back at the next start. */
    private synchronized void settle() {
        try {
            if (!behind.isEmpty()) {
                tables.apply(behind, journal.end());
                behind = List.of();
            }
            emptyWaitingTexts();
        } catch (IOException e) {
            throw new UncheckedIOException("the file of texts can't be emptied", e);
        }
    }

    /** The number of the newest fact; 0 for none. */
    public long lastSeq() {
        return journal.end().lines();
    }

    /** Every fact that the live floor is made of, by number. */
    public List<Fact> load() {
        return tables.live();
    }

    /** Every fact of one stream, however old, corrections among them; by number. */
    public List<Fact> facts(Stream stream) {
        return tables.facts(List.of(stream));
    }

    /**
     * Every fact that one of the salon's days is told from, corrections that came later among them; by number. The set-up
     * is that of the day's end.
     *
     * @throws DatabaseAway if that can't be told just now
     */
    public List<Fact> facts(LocalDate day) {
        return tables.facts(day);
    }

    /**
     * Every fact of the salon's days from one to another, both counted in, that is about no visit; by number.
     *
     * @throws DatabaseAway if that can't be told just now
     */
    public List<Fact> facts(LocalDate from, LocalDate to) {
        return tables.facts(from, to);
    }

    /**
     * What was pressed in a stretch of time, by when it was recorded; by number.
     *
     * @param until not counted in
     * @throws DatabaseAway if that can't be told just now
     */
    public List<Pressed> pressed(Instant from, Instant until) {
        return tables.pressed(from, until);
    }

    /**
     * What a press was answered.
     *
     * @throws DatabaseAway if that can't be told just now
     */
    public Optional<AnsweredPress> press(String id) {
        return waiting(id).or(() -> compactions.lack(id) ? Optional.empty() : tables.press(id));
    }

    private Optional<AnsweredPress> waiting(String id) {
        return behind.stream()
                .filter(entry -> entry.id().equals(id))
                .map(AnsweredPress::of)
                .findFirst();
    }

    /** The texts of these; one that never was or was erased is not among them. */
    public Map<TextId, String> texts(Collection<TextId> ids) {
        Map<TextId, String> texts = waiting(Set.copyOf(ids));
        texts.putAll(tables.texts(ids));
        return texts;
    }

    private Map<TextId, String> waiting(Set<TextId> ids) {
        Map<TextId, String> texts = new HashMap<>();
        behind.forEach(entry -> entry.texts().forEach((seq, body) -> texts.put(new TextId(seq), body)));
        texts.keySet().retainAll(ids);
        return texts;
    }

    /** People who come again. */
    public Clients clients() {
        return new Clients(tables, this::settle, erasures());
    }

    /** What is past its time. */
    public Retention retention() {
        return new Retention(tables, this::settle, erasures());
    }

    private Erasures erasures() {
        return new Erasures(folder.erasures());
    }

    /** The database's file without what was erased. */
    public Compactions compactions() {
        return compactions;
    }

    /** Copies of the tables, and another one of them. */
    public Copies copies() {
        return new Copies(folder, database);
    }

    /** What devices sounded. */
    public Soundings soundings() {
        return new Soundings(database);
    }

    /** Links by which a phone or a calendar may look in. */
    public LookIns lookIns() {
        return new LookIns(tables);
    }

    /** Who looked at what is private, and did what beside the floor. */
    public Trail trail() {
        return new Trail(tables);
    }

    /** The last time the database had to be made again. */
    public Optional<Rebuild> lastRebuild() {
        return tables.lastRebuild();
    }

    /** What was found in the journal at the start. */
    public Recovered recovered() {
        return journal.recovered();
    }

    Tables tables() {
        return tables;
    }

    @Override
    public synchronized void close() throws IOException {
        try (database;
                journal;
                waitingTexts) {
            if (behind.isEmpty()) {
                emptyWaitingTexts();
            }
        }
    }
}
