package rinsebell.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.StatementContext;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.report.Turned;

/** What devices sounded; the first time of each turn on each device. */
final class SoundedTable {

    private SoundedTable() {}

    /** @return how many were not there yet */
    static int write(Handle handle, Collection<Sounded> all) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into sounded
                    (kind, subject, anchor, turn_ms, device, ear, at_ms, awake_ms)
                select :kind, :subject, :anchor, :turn_ms, :device, :ear, :at_ms, :awake_ms
                where not exists (
                    select 1
                    from sounded
                    where kind = :kind
                      and subject = :subject
                      and anchor = :anchor
                      and turn_ms = :turn_ms
                      and device = :device)
                """);
        firstOfEach(all).forEach(one -> add(batch, one));
        return Arrays.stream(batch.execute()).sum();
    }

    /** Within one batch H2 goes on answering "exists" as it did before the same was added. */
    private static Collection<Sounded> firstOfEach(Collection<Sounded> all) {
        Map<List<Object>, Sounded> first = new LinkedHashMap<>();
        all.forEach(one -> first.putIfAbsent(List.of(one.turn(), one.device()), one));
        return first.values();
    }

    private static void add(PreparedBatch row, Sounded one) {
        BellKey bell = one.turn().bell();
        row.bind("kind", bell.kind().name())
                .bind("subject", bell.subject())
                .bind("anchor", bell.anchor())
                .bind("turn_ms", one.turn().from().toEpochMilli())
                .bind("device", one.device())
                .bind("ear", one.ear())
                .bind("at_ms", one.at().toEpochMilli())
                .bind("awake_ms", one.awake().toEpochMilli())
                .add();
    }

    /** In the order in which they sounded; the end is not counted in. */
    static List<Sounded> between(Handle handle, Instant from, Instant until) {
        return handle.createQuery("""
                        select kind, subject, anchor, turn_ms, device, ear, at_ms, awake_ms
                        from sounded
                        where at_ms >= :from
                          and at_ms < :until
                        order by at_ms, device
                        """)
                .bind("from", from.toEpochMilli())
                .bind("until", until.toEpochMilli())
                .map(SoundedTable::sounded)
                .list();
    }

    /** @return how many are gone */
    static int forget(Handle handle, Instant before) {
        return handle.createUpdate("""
                        delete from sounded
                        where at_ms < :before
                        """).bind("before", before.toEpochMilli()).execute();
    }

    private static Sounded sounded(ResultSet row, StatementContext context) throws SQLException {
        BellKey bell =
                new BellKey(BellKind.valueOf(row.getString("kind")), row.getLong("subject"), row.getLong("anchor"));
        return new Sounded(
                new Turned(bell, Instant.ofEpochMilli(row.getLong("turn_ms"))),
                row.getString("device"),
                row.getString("ear"),
                Instant.ofEpochMilli(row.getLong("at_ms")),
                Instant.ofEpochMilli(row.getLong("awake_ms")));
    }
}
