package rinsebell.db;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import rinsebell.db.Trail.Step;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;

/** The rows of the trail; each is written once and never changed. */
final class TrailTable {

    private static final String COLUMNS = "id, at_ms, device, staff, matter, route, subject, status, before_hash, hash";

    /** Stands before the first row. */
    private static final String START = "0".repeat(64);

    private TrailTable() {}

    private record Row(long id, Step step, String before, String hash) {

        static Row after(long id, String before, Step step) {
            return new Row(id, step, before, hash(id, before, step));
        }

        boolean isAsWritten() {
            return hash.equals(hash(id, before, step));
        }

        /** No part but the last can hold a space. */
        private static String hash(long id, String before, Step step) {
            String line = String.join(
                    " ",
                    String.valueOf(id),
                    before,
                    String.valueOf(step.at().toEpochMilli()),
                    step.device(),
                    step.who().map(person -> String.valueOf(person.value())).orElse("-"),
                    step.matter(),
                    step.about().map(String::valueOf).orElse("-"),
                    String.valueOf(step.status()),
                    step.route());
            try {
                return HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(line.getBytes(UTF_8)));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }
    }

    static void write(Handle handle, List<Step> steps) {
        Optional<Row> last = last(handle);
        long id = last.map(Row::id).orElse(0L);
        String before = last.map(Row::hash).orElse(START);
        PreparedBatch batch = handle.prepareBatch("""
                insert into trail (%s)
                values (:id, :at_ms, :device, :staff, :matter, :route, :subject, :status, :before_hash, :hash)
                """.formatted(COLUMNS));
        for (Step step : steps) {
            Row row = Row.after(++id, before, step);
            add(batch, row);
            before = row.hash();
        }
        batch.execute();
    }

    private static void add(PreparedBatch batch, Row row) {
        Step step = row.step();
        batch.bind("id", row.id())
                .bind("at_ms", step.at().toEpochMilli())
                .bind("device", step.device())
                .bind("staff", step.who().map(StaffId::value).orElse(null))
                .bind("matter", step.matter())
                .bind("route", step.route())
                .bind("subject", step.subject())
                .bind("status", step.status())
                .bind("before_hash", row.before())
                .bind("hash", row.hash())
                .add();
    }

    private static Optional<Row> last(Handle handle) {
        return handle.createQuery("""
                        select %s
                        from trail
                        order by id desc
                        fetch first row only
                        """.formatted(COLUMNS)).map(TrailTable::row).findOne();
    }

    static List<Step> between(Handle handle, Instant from, Instant until) {
        return handle.createQuery("""
                        select %s
                        from trail
                        where at_ms >= :from
                          and at_ms < :until
                        order by id
                        """.formatted(COLUMNS))
                .bind("from", from.toEpochMilli())
                .bind("until", until.toEpochMilli())
                .map(TrailTable::step)
                .list();
    }

    /** Each look at somebody's record, and all that was done to it; the newest first. */
    static List<Step> about(Handle handle, ClientId client) {
        return handle.createQuery("""
                        select %s
                        from trail
                        where matter in ('HISTORY', 'ERASING')
                          and subject = :subject
                        order by id desc
                        """.formatted(COLUMNS))
                .bind("subject", client.value())
                .map(TrailTable::step)
                .list();
    }

    /**
     * From the beginning up to the last row that is older, so that no gap comes into the chain.
     *
     * @return how many are gone
     */
    static int forget(Handle handle, Instant before) {
        return handle.createUpdate("""
                        delete from trail
                        where id <= (select max(id) from trail where at_ms < :before)
                          and id < (select max(id) from trail)
                        """).bind("before", before.toEpochMilli()).execute();
    }

    /** How many rows there are. */
    static long count(Handle handle) {
        return handle.createQuery("""
                        select count(*)
                        from trail
                        """).mapTo(Long.class).one();
    }

    /** The number of the first row that is not as it was written, or follows on another than the one before it. */
    static OptionalLong changed(Handle handle) {
        try (java.util.stream.Stream<Row> rows =
                handle.createQuery("""
                        select %s
                        from trail
                        order by id
                        """.formatted(COLUMNS)).map(TrailTable::row).stream()) {
            Row before = null;
            for (Row row : (Iterable<Row>) rows::iterator) {
                if (!row.isAsWritten() || !follows(row, before)) {
                    return OptionalLong.of(row.id());
                }
                before = row;
            }
        }
        return OptionalLong.empty();
    }

    /** Before the first one that is left there were others, which are forgotten. */
    private static boolean follows(Row row, @Nullable Row before) {
        return before == null || row.before().equals(before.hash()) && row.id() == before.id() + 1;
    }

    private static Step step(ResultSet row, StatementContext context) throws SQLException {
        return row(row, context).step();
    }

    private static Row row(ResultSet row, StatementContext context) throws SQLException {
        Long staff = Columns.maybeLong(row, "staff");
        Step step = new Step(
                Instant.ofEpochMilli(row.getLong("at_ms")),
                row.getString("device"),
                staff == null ? null : new StaffId(staff),
                row.getString("matter"),
                row.getString("route"),
                Columns.maybeLong(row, "subject"),
                row.getInt("status"));
        return new Row(
                row.getLong("id"),
                step,
                Objects.requireNonNull(row.getString("before_hash")),
                Objects.requireNonNull(row.getString("hash")));
    }
}
