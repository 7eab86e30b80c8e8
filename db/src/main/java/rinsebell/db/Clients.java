package rinsebell.db;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import rinsebell.floor.TextId;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.client.KnownClient;
import rinsebell.floor.visit.ClientId;

/**
 * People who come again: the smallest record, a label, with what their visits left. Records stand beside the facts, so
 * that they can be erased; facts only name their numbers. Any thread may call, and is told {@link DatabaseAway} while
 * the records can't be reached.
 */
public final class Clients implements ClientBook {

    private static final int MOST_VISITS = 20;

    private final Tables tables;
    private final Runnable settle;
    private final Erasures erasures;

    /**
     * What an erasing came to.
     *
     * @param isNew whether anything was there to be erased
     * @param texts that are gone with the record
     */
    public record Erased(boolean isNew, Set<TextId> texts) {}

    /** @param settle returns when every text so far is in the tables and nowhere else */
    Clients(Tables tables, Runnable settle, Erasures erasures) {
        this.tables = tables;
        this.settle = settle;
        this.erasures = erasures;
    }

    /**
     * Begins a record; it is on disk when this returns. The same press again finds the record that it began.
     *
     * @param label what the salon calls them
     * @param press the id of the press that asked for it
     */
    public ClientId add(String label, String press) {
        ClientId id = database().inTransaction(handle -> ClientTable.add(handle, label, press));
        tables.force();
        return id;
    }

    /**
     * Notes a test or a reaction that was told of outside a visit; it is on disk when this returns.
     *
     * @return whether there is such a client
     */
    public boolean note(ClientId client, ClientNote note) {
        boolean known = database().inTransaction(handle -> ClientTable.note(handle, client, note));
        tables.force();
        return known;
    }

    /**
     * Erases a record: its label, its notes, and all that was written about its visits. What the facts say of them
     * stays, under a number that is never given again. It is off the disk's tables when this returns; copies from
     * before still hold it until they are deleted, and none of them brings it back into this folder.
     *
     * @param also texts that the record's visits do not lead to, such as names of recipes
     * @return empty when the number was never given
     */
    public Optional<Erased> erase(ClientId client, Set<TextId> also) {
        settle.run();
        Optional<Erased> gone = database().inTransaction(handle -> erase(handle, client, also));
        tables.force();
        return gone;
    }

    /** How often something was erased from this folder so far; it only grows. */
    public long erasings() {
        try {
            return erasures.all().size();
        } catch (IOException e) {
            throw new DatabaseAway(e);
        }
    }

    private Optional<Erased> erase(Handle handle, ClientId client, Set<TextId> also) {
        boolean wasThere = ClientTable.delete(handle, client);
        if (!wasThere && !ClientTable.wasGiven(handle, client)) {
            return Optional.empty();
        }
        Set<TextId> texts = new HashSet<>(TextTable.ofClient(handle, client));
        texts.addAll(TextTable.find(handle, also).keySet());
        Erased erased = new Erased(wasThere || !texts.isEmpty(), texts);
        if (erased.isNew()) {
            TextTable.delete(handle, texts);
            note(client, texts);
        }
        return Optional.of(erased);
    }

    /** Before the transaction counts: one erasure noted too many is only erased once more. */
    private void note(ClientId client, Set<TextId> texts) {
        try {
            erasures.add(client, texts);
        } catch (IOException e) {
            throw new DatabaseAway(e);
        }
    }

    @Override
    public List<KnownClient> search(String letters, int most) {
        return database().with(handle -> ClientTable.search(handle, letters, most));
    }

    @Override
    public Optional<ClientCard> card(ClientId client) {
        return database().with(handle -> ClientTable.label(handle, client).map(label -> card(handle, client, label)));
    }

    /** Everything that is kept about a client; empty when there is no such record. */
    public Optional<ClientFile> file(ClientId client) {
        return database().with(handle -> ClientFile.read(handle, client));
    }

    private static ClientCard card(Handle handle, ClientId client, String label) {
        return new ClientCard(
                client, label, ClientTable.notes(handle, client), EarlierVisits.of(handle, client, MOST_VISITS));
    }

    private Database database() {
        return tables.database();
    }
}
