package rinsebell.db;

import org.jdbi.v3.core.Handle;
import rinsebell.db.journal.JournalMark;

/** How far in the journal the tables are. */
final class MarkTable {

    private MarkTable() {}

    static JournalMark read(Handle handle) {
        return handle.createQuery("""
                        select lines, hash
                        from journal_mark
                        """)
                .map((row, context) -> new JournalMark(row.getLong("lines"), row.getString("hash")))
                .one();
    }

    static void write(Handle handle, JournalMark mark) {
        handle.createUpdate("""
                        update journal_mark
                        set lines = :lines, hash = :hash
                        """)
                .bind("lines", mark.lines())
                .bind("hash", mark.hash())
                .execute();
    }
}
