package rinsebell.db.journal;

import java.nio.file.Path;
import java.util.List;
import rinsebell.floor.Ledger.NotSaved;

/** A process that writes presses until the disk refuses one, and says how many it was told are saved. */
final class JournalFiller {

    private JournalFiller() {}

    /** @param args the journal's folder */
    public static void main(String[] args) throws Exception {
        int saved = 0;
        try (Journal journal = Journal.open(Path.of(args[0]), JournalReader.NONE)) {
            while (true) {
                journal.append(List.of(JournalSample.press("press " + saved, 2)));
                saved++;
            }
        } catch (NotSaved e) {
            System.out.println(saved + " saved, then not saved: " + e.getMessage());
        }
    }
}
