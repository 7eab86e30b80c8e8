package rinsebell.db;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.visit.Visit;

/** Heat that was on a head. */
final class HeatTable {

    private HeatTable() {}

    static void write(Handle handle, Visit visit) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into heat (fact_seq, visit_id, heat, from_ms, until_ms)
                values (:fact_seq, :visit_id, :heat, :from_ms, :until_ms)
                """);
        visit.heats()
                .forEach(heat -> batch.bind("fact_seq", heat.seq())
                        .bind("visit_id", visit.id().value())
                        .bind("heat", heat.heat().name())
                        .bind("from_ms", heat.from().toEpochMilli())
                        .bind("until_ms", Columns.ms(heat.until()))
                        .add());
        batch.execute();
    }
}
