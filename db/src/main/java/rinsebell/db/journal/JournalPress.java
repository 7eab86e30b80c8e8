package rinsebell.db.journal;

import java.util.List;

/**
 * The lines of one press: all of them count or none.
 *
 * @param payloads one line of text for each fact, at least one, without line ends
 */
public record JournalPress(List<String> payloads) {

    public JournalPress {
        payloads = List.copyOf(payloads);
        if (payloads.isEmpty()) {
            throw new IllegalArgumentException("a press in the journal needs at least one fact");
        }
        payloads.forEach(JournalPress::onOneLine);
    }

    private static void onOneLine(String payload) {
        if (payload.indexOf('\n') >= 0 || payload.indexOf('\r') >= 0) {
            throw new IllegalArgumentException("a fact must stand on one line of the journal: " + payload);
        }
    }
}
