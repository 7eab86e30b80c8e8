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
                        merge into rebuild (at_ms, reason, set_aside, source, copied_ms, lacking)
                        key (at_ms)
                        values (:at_ms, :reason, :set_aside, :source, :copied_ms, :lacking)
                        """)
                .bind("at_ms", rebuild.at().toEpochMilli())
                .bind("reason", rebuild.reason())
                .bind("set_aside", rebuild.kept().map(Path::toString).orElse(null))
                .bind("source", rebuild.source().name())
                .bind("copied_ms", Columns.ms(rebuild.copied()))
                .bind("lacking", rebuild.lacking())
                .execute();
    }

    static Optional<Rebuild> last(Handle handle) {
        return handle.createQuery("""
                        select at_ms, reason, set_aside, source, copied_ms, lacking
                        from rebuild
                        order by at_ms desc
                        fetch first row only
                        """)
                .map((row, context) -> new Rebuild(
                        Instant.ofEpochMilli(row.getLong("at_ms")),
                        row.getString("reason"),
                        Optional.ofNullable(row.getString("set_aside"))
                                .map(Path::of)
                                .orElse(null),
                        Rebuild.Source.valueOf(row.getString("source")),
                        Columns.maybeInstant(row, "copied_ms"),
                        row.getLong("lacking")))
                .findOne();
    }
}
