package rinsebell.db.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Ledger.NotSaved;

/** Journals for tests, and what is read back from them. */
final class JournalSample {

    private JournalSample() {}

    /** A press of {@code facts} facts, told from others by its name. */
    static JournalPress press(String name, int facts) {
        List<String> payloads = new ArrayList<>();
        for (int fact = 1; fact <= facts; fact++) {
            payloads.add("{\"press\":\"%s\",\"fact\":%d,\"said\":\"grün, 7 g / 60 g\"}".formatted(name, fact));
        }
        return new JournalPress(payloads);
    }

    /** Writes each list as one batch and closes the journal. */
    @SafeVarargs
    static void write(Path folder, long fullAtBytes, List<JournalPress>... batches) throws IOException, NotSaved {
        Journal.Rules rules = new Journal.Rules(new RealDisk(), fullAtBytes);
        try (Journal journal = Journal.open(folder, JournalReader.NONE, rules)) {
            for (List<JournalPress> batch : batches) {
                journal.append(batch);
            }
        }
    }

    /** Opens the journal as a start would, which may cut it, and closes it again. */
    static List<JournalPress> reopened(Path folder) throws IOException {
        List<JournalPress> presses = new ArrayList<>();
        try (Journal journal = Journal.open(folder, (press, after) -> presses.add(press))) {
            return List.copyOf(presses);
        }
    }

    static Path onlyFile(Path folder) throws IOException {
        return Segment.in(folder).get(0).file();
    }
}
