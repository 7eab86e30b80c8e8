package rinsebell.db;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.Ledger.Entry;

/** Presses that were answered. */
final class PressTable {

    private PressTable() {}

    static void write(Handle handle, List<Entry> entries) {
        PreparedBatch batch = handle.prepareBatch("""
                merge into press (id, device, payload_hash, outcome)
                key (id)
                values (:id, :device, :payload_hash, :outcome)
                """);
        entries.forEach(entry -> batch.bind("id", entry.id())
                .bind("device", entry.device())
                .bind("payload_hash", entry.payloadHash())
                .bind("outcome", entry.outcome())
                .add());
        batch.execute();
    }

    static Optional<AnsweredPress> find(Handle handle, String id) {
        return handle.createQuery("""
                        select device, payload_hash, outcome
                        from press
                        where id = :id
                        """)
                .bind("id", id)
                .map((row, context) -> new AnsweredPress(
                        row.getString("device"), row.getString("payload_hash"), row.getString("outcome")))
                .findOne();
    }
}
