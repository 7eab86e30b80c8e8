package rinsebell.db;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;

/** Looks at strands and at scalps. */
final class CheckTable {

    private CheckTable() {}

    static void write(Handle handle, Visit visit) {
        writeStrands(handle, visit);
        writeScalps(handle, visit);
    }

    private static void writeStrands(Handle handle, Visit visit) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into strand_check
                    (fact_seq, visit_id, application_id, at_ms, level, tone, stretch, dryness, decision, again_ms)
                values
                    (:fact_seq, :visit_id, :application_id, :at_ms, :level, :tone, :stretch, :dryness,
                    :decision, :again_ms)
                """);
        for (Application application : visit.applications()) {
            for (StrandCheck check : application.checks()) {
                addStrand(
                        batch.bind("visit_id", visit.id().value())
                                .bind("application_id", application.id().value()),
                        check);
            }
        }
        batch.execute();
    }

    private static void addStrand(PreparedBatch row, StrandCheck check) {
        StrandFinding finding = check.finding();
        row.bind("fact_seq", check.seq())
                .bind("at_ms", check.at().toEpochMilli())
                .bind("level", finding.level())
                .bind("tone", Columns.name(finding.tone()))
                .bind("stretch", Columns.name(finding.stretch()))
                .bind("dryness", Columns.name(finding.dryness()))
                .bind("decision", Columns.decision(check.decision()))
                .bind("again_ms", Columns.again(check.decision()))
                .add();
    }

    private static void writeScalps(Handle handle, Visit visit) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into scalp_check (fact_seq, visit_id, at_ms, finding, decision, again_ms)
                values (:fact_seq, :visit_id, :at_ms, :finding, :decision, :again_ms)
                """);
        visit.scalpChecks()
                .forEach(check -> batch.bind("fact_seq", check.seq())
                        .bind("visit_id", visit.id().value())
                        .bind("at_ms", check.at().toEpochMilli())
                        .bind("finding", check.finding().name())
                        .bind("decision", Columns.decision(check.decision()))
                        .bind("again_ms", Columns.again(check.decision()))
                        .add());
        batch.execute();
    }
}
