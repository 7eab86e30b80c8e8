package rinsebell.db;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.TextId;
import rinsebell.floor.visit.ClientId;

/** Labels, names and notes: the only place where they stay. */
final class TextTable {

    private TextTable() {}

    static void write(Handle handle, List<Entry> entries) {
        if (entries.stream().allMatch(entry -> entry.texts().isEmpty())) {
            return;
        }
        PreparedBatch batch = handle.prepareBatch("""
                merge into text (fact_seq, body)
                key (fact_seq)
                values (:fact_seq, :body)
                """);
        entries.forEach(entry -> entry.texts()
                .forEach((seq, body) ->
                        batch.bind("fact_seq", seq).bind("body", body).add()));
        batch.execute();
    }

    /** Adds a text that is not there yet, if its fact is there and came with that press. */
    static void addMissing(Handle handle, WaitingTexts.Line line) {
        handle.createUpdate("""
                        insert into text (fact_seq, body)
                        select fact.seq, :body
                        from fact
                        where fact.seq = :seq
                          and fact.press_id = :press
                          and not exists (select 1 from text where text.fact_seq = :seq)
                        """)
                .bind("seq", line.seq())
                .bind("press", line.press())
                .bind("body", line.body())
                .execute();
    }

    static Map<TextId, String> find(Handle handle, Collection<TextId> ids) {
        if (ids.isEmpty()) {
            return Map.of();
        }
        return handle.createQuery("""
                        select fact_seq, body
                        from text
                        where fact_seq in (<ids>)
                        """)
                .bindList("ids", ids.stream().map(TextId::seq).toList())
                .reduceRows(new HashMap<>(), (texts, row) -> {
                    texts.put(new TextId(row.getColumn("fact_seq", Long.class)), row.getColumn("body", String.class));
                    return texts;
                });
    }

    /** What was written about this client's visits, and about the bowls of those that have ended. */
    static Set<TextId> ofClient(Handle handle, ClientId client) {
        return handle.createQuery("""
                        select text.fact_seq
                        from text
                        join fact on fact.seq = text.fact_seq
                        where fact.stream in (
                                select concat('visit ', visit.id)
                                from visit
                                where visit.client_id = :client)
                           or fact.seq in (
                                select bowl.id
                                from bowl
                                join visit on visit.id = bowl.visit_id
                                where visit.client_id = :client)
                        """)
                .bind("client", client.value())
                .map((row, context) -> new TextId(row.getLong("fact_seq")))
                .set();
    }

    /**
     * What was written about visits that ended before an instant and belong to no record that is there, and under the
     * salon's days before it: a bell's answer may be about whoever a bowl was meant for.
     */
    static Set<TextId> ofNobodyBefore(Handle handle, Instant before) {
        return handle.createQuery("""
                        select text.fact_seq
                        from text
                        join fact on fact.seq = text.fact_seq
                        where fact.stream like 'day %' and fact.recorded_ms < :before
                           or fact.stream in (
                                select concat('visit ', visit.id)
                                from visit
                                where visit.left_ms < :before
                                  and not exists (select 1 from client where client.id = visit.client_id))
                        """)
                .bind("before", before.toEpochMilli())
                .map((row, context) -> new TextId(row.getLong("fact_seq")))
                .set();
    }

    static void delete(Handle handle, Collection<TextId> ids) {
        if (!ids.isEmpty()) {
            handle.createUpdate("""
                            delete from text
                            where fact_seq in (<ids>)
                            """)
                    .bindList("ids", ids.stream().map(TextId::seq).toList())
                    .execute();
        }
    }
}
