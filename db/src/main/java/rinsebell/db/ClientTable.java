package rinsebell.db;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.client.KnownClient;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.StayEvent;

/** People who come again, and the numbers that were ever given to one. */
final class ClientTable {

    private ClientTable() {}

    static ClientId add(Handle handle, String label, String press) {
        long id = last(handle) + 1;
        return begun(handle, press).orElseGet(() -> add(handle, id, label, press));
    }

    private static Optional<ClientId> begun(Handle handle, String press) {
        return handle.createQuery("""
                        select id
                        from client
                        where press_id = :press
                        """)
                .bind("press", press)
                .map((row, context) -> new ClientId(row.getLong("id")))
                .findOne();
    }

    private static ClientId add(Handle handle, long id, String label, String press) {
        reserve(handle, id);
        handle.createUpdate("""
                        insert into client (id, label, press_id)
                        values (:id, :label, :press)
                        """)
                .bind("id", id)
                .bind("label", label)
                .bind("press", press)
                .execute();
        return new ClientId(id);
    }

    /** Numbers that facts name are never given again, even if the record itself was lost or erased. */
    static void reserve(Handle handle, Collection<Fact> facts) {
        OptionalLong highest = facts.stream()
                .map(Fact::event)
                .flatMap(ClientTable::named)
                .mapToLong(ClientId::value)
                .max();
        if (highest.isPresent()) {
            reserve(handle, highest.getAsLong());
        }
    }

    private static Stream<ClientId> named(Event event) {
        if (event instanceof StayEvent.Arrived arrived) {
            return Stream.ofNullable(arrived.client());
        }
        if (event instanceof SalonEvent.RecipeKept kept) {
            return Stream.ofNullable(kept.client());
        }
        return event instanceof StayEvent.ClientLinked linked ? Stream.ofNullable(linked.client()) : Stream.empty();
    }

    /** This number and all below it are never given again. */
    static void reserve(Handle handle, long id) {
        handle.createUpdate("""
                        update client_number
                        set last = greatest(last, :id)
                        """).bind("id", id).execute();
    }

    /** The row is locked until the transaction ends, so that two people never get one number. */
    private static long last(Handle handle) {
        return handle.createQuery("""
                        select last
                        from client_number
                        for update
                        """).mapTo(Long.class).one();
    }

    static Optional<String> label(Handle handle, ClientId id) {
        return handle.createQuery("""
                        select label
                        from client
                        where id = :id
                        """)
                .bind("id", id.value())
                .mapTo(String.class)
                .findOne();
    }

    static @Nullable Instant met(Handle handle, ClientId id) {
        return handle.createQuery("""
                        select met_ms
                        from client
                        where id = :id
                        """)
                .bind("id", id.value())
                .map((row, context) -> Optional.ofNullable(Columns.maybeInstant(row, "met_ms")))
                .one()
                .orElse(null);
    }

    /** Those whose label holds these letters; those who came last first. */
    static List<KnownClient> search(Handle handle, String letters, int most) {
        return handle.createQuery("""
                        select client.id, client.label, max(visit.arrived_ms) as last_ms
                        from client
                        left join visit on visit.client_id = client.id
                        where locate(lower(:letters), lower(client.label)) > 0
                           or :letters = ''
                        group by client.id, client.label
                        order by last_ms desc nulls last, client.label, client.id
                        fetch first :most rows only
                        """)
                .bind("letters", letters)
                .bind("most", most)
                .map((row, context) -> new KnownClient(
                        new ClientId(row.getLong("id")), row.getString("label"), Columns.maybeInstant(row, "last_ms")))
                .list();
    }

    /** @return whether there is such a client */
    static boolean note(Handle handle, ClientId client, ClientNote note) {
        return handle.createUpdate("""
                                merge into client_note (client_id, kind, noted_on)
                                key (client_id, kind, noted_on)
                                select client.id, :kind, :noted_on
                                from client
                                where client.id = :client
                                """)
                        .bind("client", client.value())
                        .bind("kind", note.kind().name())
                        .bind("noted_on", note.on())
                        .execute()
                > 0;
    }

    /**
     * Takes the record away, with its notes. Its number stays given.
     *
     * @return whether there was such a client
     */
    static boolean delete(Handle handle, ClientId client) {
        return handle.createUpdate("""
                                delete from client
                                where id = :client
                                """).bind("client", client.value()).execute() > 0;
    }

    /** Notes by when a record was there, where nobody noted that before; those who never came are kept from then on. */
    static void meet(Handle handle, Instant now) {
        handle.createUpdate("""
                        update client
                        set met_ms = :now
                        where met_ms is null
                        """).bind("now", now.toEpochMilli()).execute();
    }

    /**
     * Records of those who are not here, and of whom nothing is known since before an instant: no visit that ended
     * later, no test and no reaction that was noted later, and a record that was there before.
     */
    static List<ClientId> untouchedSince(Handle handle, Instant before) {
        return handle.createQuery("""
                        select client.id
                        from client
                        where client.met_ms < :before
                          and not exists (
                                select 1
                                from visit
                                where visit.client_id = client.id
                                  and (visit.left_ms is null or visit.left_ms >= :before))
                          and not exists (
                                select 1
                                from client_note
                                where client_note.client_id = client.id
                                  and client_note.noted_on >= :day)
                        order by client.id
                        """)
                .bind("before", before.toEpochMilli())
                .bind("day", LocalDate.ofInstant(before, ZoneOffset.UTC))
                .map((row, context) -> new ClientId(row.getLong("id")))
                .list();
    }

    /** Whether somebody has, or once had, this number. */
    static boolean wasGiven(Handle handle, ClientId client) {
        return client.value() > 0 && client.value() <= last(handle);
    }

    /** Newest first. */
    static List<ClientNote> notes(Handle handle, ClientId client) {
        return handle.createQuery("""
                        select kind, noted_on
                        from client_note
                        where client_id = :client
                        order by noted_on desc, kind
                        """)
                .bind("client", client.value())
                .map((row, context) -> new ClientNote(
                        ClientNote.Kind.valueOf(row.getString("kind")), row.getObject("noted_on", LocalDate.class)))
                .list();
    }
}
