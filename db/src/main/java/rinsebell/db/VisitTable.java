package rinsebell.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Stay;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/** Visits: a row from arrival on, with all it came to once it has ended. */
final class VisitTable {

    private VisitTable() {}

    static void write(Handle handle, Visit visit) {
        Stay stay = visit.stay();
        Gate gate = visit.gate();
        handle.createUpdate("""
                        insert into visit
                            (id, label_seq, client_id, stylist, helper, chair, arrived_ms, left_ms,
                            skin_test, skin_test_on, scalp, earlier_reaction, metal, under_16)
                        values
                            (:id, :label_seq, :client_id, :stylist, :helper, :chair, :arrived_ms, :left_ms,
                            :skin_test, :skin_test_on, :scalp, :earlier_reaction, :metal, :under_16)
                        """)
                .bind("id", visit.id().value())
                .bind("label_seq", stay.label().seq())
                .bind("client_id", Columns.number(stay.client()))
                .bind("stylist", Columns.number(stay.stylist()))
                .bind("helper", Columns.number(stay.helper()))
                .bind("chair", chair(stay.chair()))
                .bind("arrived_ms", stay.arrivedAt().toEpochMilli())
                .bind("left_ms", Columns.ms(visit.isOpen() ? null : stay.leftAt()))
                .bind(
                        "skin_test",
                        gate.skinTest() == null
                                ? null
                                : gate.skinTest().result().name())
                .bind(
                        "skin_test_on",
                        gate.skinTest() == null ? null : gate.skinTest().applied())
                .bind("scalp", Columns.name(gate.scalp()))
                .bind("earlier_reaction", Columns.name(gate.earlierReaction()))
                .bind("metal", Columns.name(gate.metal()))
                .bind("under_16", Columns.name(gate.under16()))
                .execute();
    }

    private static @Nullable Integer chair(Place.@Nullable Chair chair) {
        return chair == null ? null : chair.number();
    }

    /** Takes these visits away, with everything that hangs on them. */
    static void delete(Handle handle, Collection<VisitId> visits) {
        handle.createUpdate("""
                        delete from visit
                        where id in (<ids>)
                        """).bindList("ids", values(visits)).execute();
    }

    /** Takes the rows of all visits away; the facts make them again. */
    static void clear(Handle handle) {
        handle.execute("delete from visit");
    }

    /** Those of these visits that have ended. */
    static List<VisitId> ended(Handle handle, Collection<VisitId> visits) {
        return handle.createQuery("""
                        select id
                        from visit
                        where id in (<ids>)
                          and left_ms is not null
                        """)
                .bindList("ids", values(visits))
                .map(VisitTable::id)
                .list();
    }

    static List<VisitId> open(Handle handle) {
        return handle.createQuery("""
                        select id
                        from visit
                        where left_ms is null
                        """).map(VisitTable::id).list();
    }

    /** Open visits, and those that ended at this instant or later. */
    static List<VisitId> openSince(Handle handle, long sinceMs) {
        return handle.createQuery("""
                        select id
                        from visit
                        where left_ms is null
                           or left_ms >= :since
                        """)
                .bind("since", sinceMs)
                .map(VisitTable::id)
                .list();
    }

    /** Those who were here at some time of this stretch. */
    static List<VisitId> between(Handle handle, Instant from, Instant until) {
        return handle.createQuery("""
                        select id
                        from visit
                        where arrived_ms < :until
                          and (left_ms is null or left_ms >= :from)
                        """)
                .bind("from", from.toEpochMilli())
                .bind("until", until.toEpochMilli())
                .map(VisitTable::id)
                .list();
    }

    static List<VisitId> arrivedSince(Handle handle, Instant since) {
        return handle.createQuery("""
                        select id
                        from visit
                        where arrived_ms >= :since
                        """)
                .bind("since", since.toEpochMilli())
                .map(VisitTable::id)
                .list();
    }

    /** Every visit of a client, newest first. */
    static List<VisitId> of(Handle handle, ClientId client) {
        return handle.createQuery("""
                        select id
                        from visit
                        where client_id = :client
                        order by arrived_ms desc, id desc
                        """)
                .bind("client", client.value())
                .map(VisitTable::id)
                .list();
    }

    /** When the first of these visits began. */
    static Optional<Instant> firstArrived(Handle handle, Collection<VisitId> visits) {
        return visits.isEmpty()
                ? Optional.empty()
                : handle.createQuery("""
                                select min(arrived_ms)
                                from visit
                                where id in (<ids>)
                                """)
                        .bindList("ids", values(visits))
                        .mapTo(Long.class)
                        .findOne()
                        .map(Instant::ofEpochMilli);
    }

    private static VisitId id(ResultSet row, StatementContext context) throws SQLException {
        return new VisitId(row.getLong("id"));
    }

    private static List<Long> values(Collection<VisitId> visits) {
        return visits.stream().map(VisitId::value).toList();
    }
}
