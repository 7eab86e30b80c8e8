package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import rinsebell.db.codec.PressLines;
import rinsebell.db.codec.UnreadableFact;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalDamaged;
import rinsebell.db.journal.JournalMark;
import rinsebell.db.journal.JournalPress;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;

/**
 * Finds what was changed by hand: reads the journal along its chain of hashes, holds every row of a fact and of the press
 * that wrote it against its line, and follows the chain of the trail. A journal that somebody wrote anew as a whole fits
 * itself; so the end of each copy is looked for in it. Changes nothing. Used once.
 */
public final class Verifying {

    /** Nobody reads more. */
    private static final int MOST_FAULTS = 20;

    private final Handle handle;
    private final JournalMark reached;
    private final List<Held> copies;
    private final List<String> faults = new ArrayList<>();
    private JournalMark end = JournalMark.START;
    private long presses;

    private Verifying(Handle handle, List<Held> copies) {
        this.handle = handle;
        this.reached = MarkTable.read(handle);
        this.copies = copies;
    }

    /** A copy, and how far in the journal it says that it goes. */
    private record Held(Copy copy, JournalMark mark) {}

    /**
     * Reads everything in a folder in which no server works.
     *
     * @throws IOException if it holds no salon, or the disk refused something
     */
    public static Verified of(DataFolder folder) throws IOException {
        if (!Files.exists(folder.databaseFile())) {
            throw new IOException("there is no database in " + folder.path());
        }
        List<String> unreadable = new ArrayList<>();
        List<Held> copies = copies(folder, unreadable);
        Jdbi jdbi = Jdbi.create(
                Database.address(folder.database()) + ";ACCESS_MODE_DATA=r;IFEXISTS=TRUE", Database.USER, "");
        try (Handle handle = jdbi.open()) {
            Verifying verifying = new Verifying(handle, copies);
            unreadable.forEach(verifying::fault);
            return verifying.verified(folder);
        } catch (JdbiException e) {
            throw new IOException("the database can't be read (" + Causes.told(e) + ")", e);
        }
    }

    private static List<Held> copies(DataFolder folder, List<String> unreadable) throws IOException {
        List<Held> held = new ArrayList<>();
        for (Copy copy : Copy.in(folder.copies())) {
            try {
                held.add(new Held(copy, Contents.of(copy.file()).mark()));
            } catch (CopyUnreadable e) {
                unreadable.add("the copy " + copy.file().getFileName() + " can't be used: " + e.getMessage());
            }
        }
        return held;
    }

    private Verified verified(DataFolder folder) throws IOException {
        List<JournalMark> places = new ArrayList<>(List.of(JournalMark.START));
        List<JournalMark> wanted =
                new ArrayList<>(copies.stream().map(Held::mark).toList());
        wanted.add(reached);
        try {
            Journal.read(folder.journal(), (press, after) -> {
                take(press, after);
                if (wanted.contains(after)) {
                    places.add(after);
                }
            });
            finish(places);
        } catch (JournalDamaged e) {
            fault(String.valueOf(e.getMessage()));
        }
        TrailTable.changed(handle)
                .ifPresent(row ->
                        fault("row " + row + " of the trail is not as it was written, or one before it is gone"));
        return new Verified(
                presses,
                end,
                Math.max(0, end.lines() - reached.lines()),
                TrailTable.count(handle),
                copies.size(),
                faults);
    }

    private void take(JournalPress press, JournalMark after) {
        long first = end.lines() + 1;
        presses++;
        end = after;
        if (after.lines() <= reached.lines() && faults.size() < MOST_FAULTS) {
            try {
                compare(PressLines.read(press.payloads()), first);
            } catch (UnreadableFact e) {
                fault("line " + first + " of the journal can't be read: " + e.getMessage());
            }
        }
    }

    private void compare(Entry written, long first) {
        List<PressedFacts.Row> rows = rows(written, first);
        for (Fact fact : written.facts()) {
            List<PressedFacts.Row> same =
                    rows.stream().filter(row -> row.fact().seq() == fact.seq()).toList();
            if (same.isEmpty()) {
                fault("fact " + fact.seq() + " has no row that can be read, or the row of its press is missing");
            } else if (!same.get(0).fact().equals(fact)) {
                fault("the row of fact " + fact.seq() + " is not what the journal says");
            } else if (!isPressedAlike(same.get(0), written)) {
                fault("the row of press " + written.id() + ", which wrote fact " + fact.seq()
                        + ", is not what the journal says");
            }
        }
    }

    private List<PressedFacts.Row> rows(Entry written, long first) {
        try {
            return FactTable.pressed(handle, first, first + written.facts().size() - 1);
        } catch (JdbiException | UnreadableFact | IllegalArgumentException e) {
            return List.of();
        }
    }

    private static boolean isPressedAlike(PressedFacts.Row row, Entry written) {
        return row.press().equals(written.id()) && row.answered().equals(AnsweredPress.of(written));
    }

    private void finish(List<JournalMark> places) {
        if (!places.contains(reached)) {
            fault("the database goes up to fact " + reached.lines() + " of another journal than the one beside it");
        }
        long rows = FactTable.count(handle);
        if (rows != reached.lines()) {
            fault("the database has " + rows + " rows of facts, and says that it has " + reached.lines());
        }
        copies.stream()
                .filter(held -> !places.contains(held.mark))
                .forEach(held -> fault("the copy " + held.copy.file().getFileName()
                        + " holds other facts than the journal: one of the two was changed, or its end is missing"));
    }

    private void fault(String what) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(what);
        }
    }
}
