package rinsebell.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Each time that what was past its time was erased, and each time the file was compacted; never whom it was about. */
final class RetentionTable {

    private RetentionTable() {}

    static void write(Handle handle, Retention.Run run) {
        handle.createUpdate("""
                        insert into retention (at_ms, until_ms, records, texts, soundings, steps)
                        values (:at_ms, :until_ms, :records, :texts, :soundings, :steps)
                        """)
                .bind("at_ms", run.at().toEpochMilli())
                .bind("until_ms", run.until().toEpochMilli())
                .bind("records", run.records())
                .bind("texts", run.texts())
                .bind("soundings", run.soundings())
                .bind("steps", run.steps())
                .execute();
    }

    /** By the order in which they were written, the newest first: the clock may have been set between them. */
    static List<Retention.Run> last(Handle handle, int most) {
        return handle.createQuery("""
                        select at_ms, until_ms, records, texts, soundings, steps
                        from retention
                        order by id desc
                        fetch first :most rows only
                        """)
                .bind("most", most)
                .map(RetentionTable::run)
                .list();
    }

    private static Retention.Run run(ResultSet row, StatementContext context) throws SQLException {
        return new Retention.Run(
                Instant.ofEpochMilli(row.getLong("at_ms")),
                Instant.ofEpochMilli(row.getLong("until_ms")),
                row.getInt("records"),
                row.getInt("texts"),
                row.getInt("soundings"),
                row.getInt("steps"));
    }

    /** When the first fact was recorded. */
    static Optional<Instant> firstFact(Handle handle) {
        return handle.createQuery("""
                        select min(recorded_ms) as first_ms
                        from fact
                        """)
                .map((row, context) -> Optional.ofNullable(Columns.maybeInstant(row, "first_ms")))
                .one();
    }

    static void compacted(Handle handle, Instant at, long erasures) {
        handle.createUpdate("""
                        insert into compaction (at_ms, erasures)
                        values (:at_ms, :erasures)
                        """)
                .bind("at_ms", at.toEpochMilli())
                .bind("erasures", erasures)
                .execute();
    }

    /** How many erasures there had been when the file was compacted last; 0 for never. */
    static long erasuresCompacted(Handle handle) {
        return handle.createQuery("""
                        select coalesce(max(erasures), 0)
                        from compaction
                        """).mapTo(Long.class).one();
    }

    static Optional<Instant> lastCompaction(Handle handle) {
        return handle.createQuery("""
                        select at_ms
                        from compaction
                        order by id desc
                        fetch first row only
                        """)
                .map((row, context) -> Instant.ofEpochMilli(row.getLong("at_ms")))
                .findOne();
    }
}
