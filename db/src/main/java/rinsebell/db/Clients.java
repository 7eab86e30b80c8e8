package rinsebell.db;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import rinsebell.floor.visit.ClientId;

/**
 * People who come again: the smallest record, a label, with what their visits left. Records stand beside the facts, so
 * that they can be erased; facts only name their numbers. Any thread may call.
 */
public final class Clients {

    private static final int MOST_VISITS = 20;

    private final Tables tables;

    Clients(Tables tables) {
        this.tables = tables;
    }

    /**
     * Begins a record; it is on disk when this returns.
     *
     * @param label what the salon calls them
     */
    public ClientId add(String label) {
        ClientId id = jdbi().inTransaction(handle -> ClientTable.add(handle, label));
        tables.force();
        return id;
    }

    /**
     * Notes a test or a reaction that was told of outside a visit; it is on disk when this returns.
     *
     * @return whether there is such a client
     */
    public boolean note(ClientId client, ClientNote note) {
        boolean known = jdbi().inTransaction(handle -> ClientTable.note(handle, client, note));
        tables.force();
        return known;
    }

    /**
     * Clients whose label holds these letters, capitals or not; those who came last first.
     *
     * @param letters nothing for everybody
     * @param most how many at most
     */
    public List<KnownClient> search(String letters, int most) {
        return jdbi().withHandle(handle -> ClientTable.search(handle, letters, most));
    }

    /** All that is known of a client; empty when there is no such record. */
    public Optional<ClientCard> card(ClientId client) {
        return jdbi().withHandle(handle -> ClientTable.label(handle, client).map(label -> card(handle, client, label)));
    }

    private static ClientCard card(Handle handle, ClientId client, String label) {
        return new ClientCard(
                client, label, ClientTable.notes(handle, client), EarlierVisits.of(handle, client, MOST_VISITS));
    }

    private Jdbi jdbi() {
        return tables.jdbi();
    }
}
