package rinsebell.db;

import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.client.EarlierBowl;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.VisitId;

/** Reads the bowls of an ended visit. */
final class EarlierBowls {

    private EarlierBowls() {}

    private record Row(long id, Instant mixed, BowlReason reason) {}

    /** In the order of mixing. */
    static List<EarlierBowl> of(Handle handle, VisitId visit) {
        return handle
                .createQuery("""
                        select id, mixed_ms, reason
                        from bowl
                        where visit_id = :visit
                        order by mixed_ms, id
                        """)
                .bind("visit", visit.value())
                .map((row, context) -> new Row(
                        row.getLong("id"),
                        Instant.ofEpochMilli(row.getLong("mixed_ms")),
                        BowlReason.valueOf(row.getString("reason"))))
                .list()
                .stream()
                .map(row -> bowl(handle, visit, row))
                .toList();
    }

    private static EarlierBowl bowl(Handle handle, VisitId visit, Row row) {
        return new EarlierBowl(
                row.mixed(), row.reason(), portions(handle, visit, row.id()), uses(handle, visit, row.id()));
    }

    private static List<EarlierBowl.Part> portions(Handle handle, VisitId visit, long bowl) {
        return handle.createQuery("""
                        select product, grams
                        from portion
                        where visit_id = :visit
                          and bowl_id = :bowl
                        order by place
                        """)
                .bind("visit", visit.value())
                .bind("bowl", bowl)
                .map((row, context) ->
                        new EarlierBowl.Part(row.getString("product"), new Grams(row.getBigDecimal("grams"))))
                .list();
    }

    private static List<EarlierBowl.Use> uses(Handle handle, VisitId visit, long bowl) {
        return handle.createQuery("""
                        select area, first_on_ms, ended_ms
                        from application
                        where visit_id = :visit
                          and bowl_id = :bowl
                        order by first_on_ms, id
                        """)
                .bind("visit", visit.value())
                .bind("bowl", bowl)
                .map((row, context) -> new EarlierBowl.Use(
                        Area.valueOf(row.getString("area")),
                        Instant.ofEpochMilli(row.getLong("first_on_ms")),
                        Columns.maybeInstant(row, "ended_ms")))
                .list();
    }
}
