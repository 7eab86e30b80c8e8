package rinsebell.db;

import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Links that were made and not taken back. */
final class LookInTable {

    private LookInTable() {}

    static void add(Handle handle, LookIns.Fresh fresh) {
        handle.createUpdate("""
                        insert into look_in (key_hash, name, made_ms, press_id)
                        values (:key_hash, :name, :made_ms, :press_id)
                        """)
                .bind("key_hash", fresh.keyHash())
                .bind("name", fresh.name())
                .bind("made_ms", fresh.made().toEpochMilli())
                .bind("press_id", fresh.press())
                .execute();
    }

    static boolean isMadeBy(Handle handle, String press) {
        return handle.createQuery("""
                        select count(*)
                        from look_in
                        where press_id = :press_id
                        """).bind("press_id", press).mapTo(Long.class).one() > 0;
    }

    static long count(Handle handle) {
        return handle.createQuery("""
                        select count(*)
                        from look_in
                        """).mapTo(Long.class).one();
    }

    /** The newest first. */
    static List<LookIns.Link> all(Handle handle) {
        return handle.createQuery("""
                        select id, name, made_ms, opened_ms
                        from look_in
                        order by id desc
                        """)
                .map((row, context) -> new LookIns.Link(
                        row.getLong("id"),
                        row.getString("name"),
                        Instant.ofEpochMilli(row.getLong("made_ms")),
                        Columns.maybeInstant(row, "opened_ms")))
                .list();
    }

    static boolean isOpen(Handle handle, String keyHash) {
        return handle.createQuery("""
                        select count(*)
                        from look_in
                        where key_hash = :key_hash
                        """)
                        .bind("key_hash", keyHash)
                        .mapTo(Long.class)
                        .one()
                > 0;
    }

    /** @param unless it was noted since then */
    static void noteOpened(Handle handle, String keyHash, Instant now, Instant unless) {
        handle.createUpdate("""
                        update look_in
                        set opened_ms = :now_ms
                        where key_hash = :key_hash
                          and (opened_ms is null or opened_ms <= :unless_ms)
                        """)
                .bind("key_hash", keyHash)
                .bind("now_ms", now.toEpochMilli())
                .bind("unless_ms", unless.toEpochMilli())
                .execute();
    }

    static int delete(Handle handle, long id) {
        return handle.createUpdate("""
                        delete from look_in
                        where id = :id
                        """).bind("id", id).execute();
    }

    static int clear(Handle handle) {
        return handle.execute("delete from look_in");
    }
}
