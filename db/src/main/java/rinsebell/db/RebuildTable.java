package rinsebell.db;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Each time the tables had to be made again. */
final class RebuildTable {

    private RebuildTable() {}

    static void write(Handle handle, Rebuild rebuild) {
        handle.createUpdate("""
                        insert into rebuild (at_ms, reason, set_aside)
                        values (:at_ms, :reason, :set_aside)
                        """)
                .bind("at_ms", rebuild.at().toEpochMilli())
                .bind("reason", rebuild.reason())
                .bind("set_aside", rebuild.kept().map(Path::toString).orElse(null))
                .execute();
    }

    static Optional<Rebuild> last(Handle handle) {
        return handle.createQuery("""
                        select at_ms, reason, set_aside
                        from rebuild
                        order by at_ms desc
                        fetch first row only
                        """)
                .map((row, context) -> new Rebuild(
                        Instant.ofEpochMilli(row.getLong("at_ms")),
                        row.getString("reason"),
                        Optional.ofNullable(row.getString("set_aside"))
                                .map(Path::of)
                                .orElse(null)))
                .findOne();
    }
}
