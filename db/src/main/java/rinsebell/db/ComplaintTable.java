package rinsebell.db;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.visit.Visit;

/** Discomfort that clients spoke of. */
final class ComplaintTable {

    private ComplaintTable() {}

    static void write(Handle handle, Visit visit) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into complaint (fact_seq, visit_id, grade, at_ms)
                values (:fact_seq, :visit_id, :grade, :at_ms)
                """);
        visit.complaints()
                .forEach(complaint -> batch.bind("fact_seq", complaint.seq())
                        .bind("visit_id", visit.id().value())
                        .bind("grade", complaint.grade().name())
                        .bind("at_ms", complaint.at().toEpochMilli())
                        .add());
        batch.execute();
    }
}
