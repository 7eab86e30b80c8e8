package rinsebell.db;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import rinsebell.db.journal.JournalMark;

/**
 * What is in a copy.
 *
 * @param mark the place in the journal up to which it goes; that many facts are in it
 * @param newest when the newest fact was recorded; null when there is none
 * @param texts how many labels, names and notes
 * @param clients how many client records
 */
public record Contents(JournalMark mark, @Nullable Instant newest, long texts, long clients) {

    /**
     * Reads a whole copy, in memory alone.
     *
     * @throws CopyUnreadable if it is damaged, no copy at all, or holds other than it says
     * @throws IOException if the system refused something, which says nothing about the copy
     */
    public static Contents of(Path copy) throws IOException, CopyUnreadable {
        try (Connection memory = DriverManager.getConnection("jdbc:h2:mem:", Database.USER, "")) {
            CopyScript.run(copy, memory);
            return checked(Jdbi.open(memory));
        } catch (SQLException | JdbiException e) {
            Database.refusePassing(e);
            throw new CopyUnreadable("it lacks tables of a copy (" + Causes.told(e) + ")", e);
        }
    }

    private static Contents checked(Handle memory) throws CopyUnreadable {
        Contents contents = of(memory);
        long held = FactTable.count(memory);
        if (held != contents.facts()) {
            throw new CopyUnreadable("it says " + contents.facts() + " facts and holds " + held);
        }
        return contents;
    }

    static Contents of(Handle handle) {
        return handle.createQuery("""
                        select
                            (select max(recorded_ms) from fact) as newest_ms,
                            (select count(*) from text) as texts,
                            (select count(*) from client) as clients
                        """)
                .map((row, context) -> new Contents(
                        MarkTable.read(handle),
                        Columns.maybeInstant(row, "newest_ms"),
                        row.getLong("texts"),
                        row.getLong("clients")))
                .one();
    }

    public long facts() {
        return mark.lines();
    }
}
