package rinsebell.db;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.visit.VisitId;

/** Bowls that a visit used or that were mixed for it, and what was in them. */
final class BowlTable {

    private BowlTable() {}

    /** @param names the name of a portion's product, in the edition of directions that was in force at mixing */
    static void write(Handle handle, VisitId visit, Collection<Bowl> bowls, Function<Portion, String> names) {
        writeBowls(handle, visit, bowls);
        PreparedBatch batch = handle.prepareBatch("""
                insert into portion (visit_id, bowl_id, place, product_id, edition, product, grams)
                values (:visit_id, :bowl_id, :place, :product_id, :edition, :product, :grams)
                """);
        bowls.forEach(bowl -> addPortions(batch, visit, bowl, names));
        batch.execute();
    }

    private static void writeBowls(Handle handle, VisitId visit, Collection<Bowl> bowls) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into bowl (visit_id, id, root_id, mixed_ms, reason, thrown_away_ms)
                values (:visit_id, :id, :root_id, :mixed_ms, :reason, :thrown_away_ms)
                """);
        bowls.forEach(bowl -> batch.bind("visit_id", visit.value())
                .bind("id", bowl.id().value())
                .bind("root_id", bowl.root().value())
                .bind("mixed_ms", bowl.mixedAt().toEpochMilli())
                .bind("reason", bowl.reason().name())
                .bind("thrown_away_ms", Columns.ms(bowl.thrownAwayAt()))
                .add());
        batch.execute();
    }

    private static void addPortions(PreparedBatch batch, VisitId visit, Bowl bowl, Function<Portion, String> names) {
        int place = 1;
        for (Portion portion : bowl.portions()) {
            batch.bind("visit_id", visit.value())
                    .bind("bowl_id", bowl.id().value())
                    .bind("place", place++)
                    .bind("product_id", portion.product().value())
                    .bind("edition", portion.edition())
                    .bind("product", names.apply(portion))
                    .bind("grams", portion.grams().amount())
                    .add();
        }
    }

    /** The visits in whose rows this bowl, or one divided from the same mixing, stands. */
    static List<VisitId> visitsOf(Handle handle, BowlId bowl) {
        return handle.createQuery("""
                        select distinct same.visit_id
                        from bowl as named
                        join bowl as same on same.root_id = named.root_id
                        where named.id = :bowl
                        """)
                .bind("bowl", bowl.value())
                .map((row, context) -> new VisitId(row.getLong("visit_id")))
                .list();
    }
}
