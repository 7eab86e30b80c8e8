package rinsebell.db;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import rinsebell.db.codec.PressLines;
import rinsebell.db.codec.UnreadableFact;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalMark;
import rinsebell.db.journal.JournalPress;
import rinsebell.db.journal.JournalReader;
import rinsebell.db.journal.Recovered;
import rinsebell.floor.Ledger.Entry;

/** Writes what the journal has and the tables lack, while the journal is being read. */
final class CatchUp implements JournalReader {

    private static final int TOGETHER = 500;

    private final Tables tables;
    private final JournalMark reached;
    private final List<Entry> missing = new ArrayList<>();
    private JournalMark last = JournalMark.START;

    CatchUp(Tables tables) {
        this.tables = tables;
        this.reached = tables.mark();
    }

    /**
     * Opens the journal, and brings the tables up to it.
     *
     * @throws StoreBroken if they do not belong together, or a later version of the program wrote the journal
     */
    static Journal journal(DataFolder folder, Tables tables) throws IOException {
        CatchUp catchUp = new CatchUp(tables);
        Journal journal = opened(folder, catchUp);
        try {
            catchUp.finish();
            return journal;
        } catch (RuntimeException e) {
            journal.close();
            throw e;
        }
    }

    private static Journal opened(DataFolder folder, CatchUp catchUp) throws IOException {
        try {
            return Journal.open(folder.journal(), catchUp);
        } catch (UnreadableFact e) {
            throw new StoreBroken("a fact in the journal can't be read: " + e.getMessage(), e);
        }
    }

    @Override
    public void press(JournalPress press, JournalMark after) {
        if (after.lines() > reached.lines()) {
            refuseStrange(last);
            missing.add(PressLines.read(press.payloads()));
        }
        last = after;
        if (missing.size() >= TOGETHER) {
            write();
        }
    }

    /** @throws StoreBroken if the tables know more than the journal, or other things */
    @Override
    public void end(Recovered journal) {
        if (journal.end().lines() < reached.lines()) {
            throw new StoreBroken("the database holds " + reached.lines() + " facts, but the journal ends with fact "
                    + journal.end().lines() + " in " + journal.lastFile()
                    + ": the journal's last file is missing or was cut");
        }
        if (missing.isEmpty()) {
            refuseStrange(last);
        }
    }

    /** Writes the rest, once the journal has forced to disk what was read from it. */
    void finish() {
        write();
    }

    /** Once {@code missing} holds something, the place the tables had reached was seen to fit. */
    private void refuseStrange(JournalMark before) {
        if (missing.isEmpty() && before.lines() <= reached.lines() && !before.equals(reached)) {
            throw new StoreBroken("the database goes up to fact " + reached.lines()
                    + " of another journal than the one beside it: their files do not belong together");
        }
    }

    private void write() {
        if (!missing.isEmpty()) {
            tables.apply(missing, last);
            missing.clear();
        }
    }
}
