package rinsebell.demo;

import java.time.LocalDate;
import java.util.List;
import rinsebell.db.Clients;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.visit.ClientId;

/** Those who come again, in the order in which their records were begun. */
final class Regulars {
    static final ClientId A_K = new ClientId(1);
    static final ClientId H_N = new ClientId(2);
    private static final ClientId B_D = new ClientId(3);

    private static final List<String> LABELS = List.of("A. K.", "H. N.", "B. D.");

    private Regulars() {}

    /**
     * Begins their records in a store that has none yet. One of them once told of a reaction to dye.
     *
     * @param today the salon's date
     */
    static void enterIn(Clients clients, LocalDate today) {
        LABELS.forEach(label -> clients.add(label, "regular-" + label));
        clients.note(B_D, new ClientNote(ClientNote.Kind.REACTION, today.minusDays(120)));
    }
}
