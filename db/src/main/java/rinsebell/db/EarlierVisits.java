package rinsebell.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.client.EarlierVisit;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.VisitId;

/** Reads what the ended visits of a client left. */
final class EarlierVisits {

    private EarlierVisits() {}

    private record Row(VisitId id, Instant arrived, Gate gate) {}

    /** Newest first. */
    static List<EarlierVisit> of(Handle handle, ClientId client, int most) {
        return handle
                .createQuery("""
                        select id, arrived_ms, skin_test, skin_test_on, scalp, earlier_reaction, metal, under_16
                        from visit
                        where client_id = :client
                          and left_ms is not null
                        order by arrived_ms desc, id desc
                        fetch first :most rows only
                        """)
                .bind("client", client.value())
                .bind("most", most)
                .map(EarlierVisits::row)
                .list()
                .stream()
                .map(row -> visit(handle, row))
                .toList();
    }

    private static EarlierVisit visit(Handle handle, Row row) {
        return new EarlierVisit(
                row.id(), row.arrived(), row.gate(), complaints(handle, row.id()), EarlierBowls.of(handle, row.id()));
    }

    private static List<Complaint.Grade> complaints(Handle handle, VisitId visit) {
        return handle.createQuery("""
                        select grade
                        from complaint
                        where visit_id = :visit
                        order by at_ms, fact_seq
                        """)
                .bind("visit", visit.value())
                .map((row, context) -> Complaint.Grade.valueOf(row.getString("grade")))
                .list();
    }

    private static Row row(ResultSet row, StatementContext context) throws SQLException {
        Gate gate = new Gate(
                skinTest(row),
                Columns.maybe(Gate.Scalp.class, row, "scalp"),
                Columns.maybe(Gate.YesNo.class, row, "earlier_reaction"),
                Columns.maybe(Gate.Metal.class, row, "metal"),
                Columns.maybe(Gate.YesNo.class, row, "under_16"));
        return new Row(new VisitId(row.getLong("id")), Instant.ofEpochMilli(row.getLong("arrived_ms")), gate);
    }

    private static @Nullable SkinTest skinTest(ResultSet row) throws SQLException {
        SkinTest.Result result = Columns.maybe(SkinTest.Result.class, row, "skin_test");
        return result == null ? null : new SkinTest(result, row.getObject("skin_test_on", LocalDate.class));
    }
}
