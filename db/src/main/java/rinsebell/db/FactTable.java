package rinsebell.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.ResultIterable;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;
import rinsebell.db.codec.FactRow;
import rinsebell.db.codec.StreamName;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.Stream;
import rinsebell.floor.visit.VisitId;

/** Facts; each is written once and never changed. */
final class FactTable {

    private static final String COLUMNS = "seq, stream, kind, version, happened_ms, recorded_ms, by_staff, body";

    private FactTable() {}

    static void write(Handle handle, List<Entry> entries) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into fact
                    (seq, stream, kind, version, happened_ms, recorded_ms, by_staff, press_id, body)
                values
                    (:seq, :stream, :kind, :version, :happened_ms, :recorded_ms, :by_staff, :press_id, :body)
                """);
        entries.forEach(entry -> entry.facts().forEach(fact -> add(batch, FactRow.of(fact), entry.id())));
        batch.execute();
    }

    private static void add(PreparedBatch batch, FactRow fact, String press) {
        batch.bind("seq", fact.seq())
                .bind("stream", fact.stream())
                .bind("kind", fact.kind())
                .bind("version", fact.version())
                .bind("happened_ms", fact.happenedMs())
                .bind("recorded_ms", fact.recordedMs())
                .bind("by_staff", fact.byStaff())
                .bind("press_id", press)
                .bind("body", fact.body())
                .add();
    }

    /** Every fact of these streams, by number. */
    static List<Fact> in(Handle handle, Collection<? extends Stream> streams) {
        if (streams.isEmpty()) {
            return List.of();
        }
        return handle.createQuery("""
                        select %s
                        from fact
                        where stream in (<streams>)
                        order by seq
                        """.formatted(COLUMNS))
                .bindList("streams", streams.stream().map(StreamName::of).toList())
                .map(FactTable::fact)
                .list();
    }

    /** Every fact of the salon's days from one to another, both counted in, by number. */
    static List<Fact> ofDays(Handle handle, LocalDate from, LocalDate to) {
        return handle.createQuery("""
                        select %s
                        from fact
                        where stream between :from and :to
                        order by seq
                        """.formatted(COLUMNS))
                .bind("from", StreamName.of(Stream.day(from)))
                .bind("to", StreamName.of(Stream.day(to)))
                .map(FactTable::fact)
                .list();
    }

    /** The facts of these numbers; one that there is not is left out. */
    static List<Fact> numbered(Handle handle, Collection<Long> numbers) {
        return handle.createQuery("""
                        select %s
                        from fact
                        where seq in (<numbers>)
                        """.formatted(COLUMNS))
                .bindList("numbers", List.copyOf(numbers))
                .map(FactTable::fact)
                .list();
    }

    /**
     * The first of the days under which a fact with this number or a higher one was recorded.
     *
     * @param seq not above that of some day's fact
     */
    static LocalDate firstDaySince(Handle handle, long seq) {
        return handle.createQuery("""
                        select min(stream)
                        from fact
                        where seq >= :seq
                          and stream like 'day %'
                        """)
                .bind("seq", seq)
                .map((row, context) -> ((Stream.OfDay) StreamName.parse(row.getString(1))).date())
                .one();
    }

    /** The visits about which a fact with a higher number than this says something. */
    static List<VisitId> visitsAfter(Handle handle, long seq) {
        return handle.createQuery("""
                        select distinct stream
                        from fact
                        where seq > :seq
                          and stream like 'visit %'
                        """)
                .bind("seq", seq)
                .map((row, context) -> ((Stream.OfVisit) StreamName.parse(row.getString("stream"))).visit())
                .list();
    }

    /** The newest fact of a kind. */
    static Optional<Fact> last(Handle handle, String kind) {
        return handle.createQuery("""
                        select %s
                        from fact
                        where kind = :kind
                        order by seq desc
                        fetch first row only
                        """.formatted(COLUMNS))
                .bind("kind", kind)
                .map(FactTable::fact)
                .findOne();
    }

    /** Takes all facts away; those in the journal stay what they are. */
    static void clear(Handle handle) {
        handle.execute("delete from fact");
    }

    /** The presses that wrote facts, by the numbers of their facts; each with its facts and without texts. */
    static void eachPress(Handle handle, Consumer<Entry> taker) {
        PressedFacts presses = new PressedFacts(taker);
        try (java.util.stream.Stream<PressedFacts.Row> rows = rows(pressed(handle, "true")).stream()) {
            rows.forEach(presses::take);
        }
        presses.end();
    }

    /** The facts from one number to another, both counted in, with the presses that wrote them; by number. */
    static List<PressedFacts.Row> pressed(Handle handle, long from, long to) {
        return rows(pressed(handle, "seq between :from and :to")
                        .bind("from", from)
                        .bind("to", to))
                .list();
    }

    /** The facts that were recorded in a stretch of time, with the presses that wrote them; by number. */
    static List<PressedFacts.Row> recorded(Handle handle, Instant from, Instant until) {
        return rows(pressed(handle, "recorded_ms >= :from and recorded_ms < :until")
                        .bind("from", from.toEpochMilli())
                        .bind("until", until.toEpochMilli()))
                .list();
    }

    private static Query pressed(Handle handle, String where) {
        return handle.createQuery("""
                select %s, press_id, device, payload_hash, outcome
                from fact
                join press on press.id = fact.press_id
                where %s
                order by seq
                """.formatted(COLUMNS, where));
    }

    private static ResultIterable<PressedFacts.Row> rows(Query pressed) {
        return pressed.map((row, context) -> new PressedFacts.Row(
                fact(row, context),
                row.getString("press_id"),
                new AnsweredPress(row.getString("device"), row.getString("payload_hash"), row.getString("outcome"))));
    }

    /** How many facts there are; facts are numbered from 1 without gaps. */
    static long count(Handle handle) {
        return handle.createQuery("""
                        select count(*)
                        from fact
                        """).mapTo(Long.class).one();
    }

    private static Fact fact(ResultSet row, StatementContext context) throws SQLException {
        return new FactRow(
                        row.getLong("seq"),
                        row.getString("stream"),
                        row.getString("kind"),
                        row.getInt("version"),
                        row.getLong("happened_ms"),
                        row.getLong("recorded_ms"),
                        Columns.maybeLong(row, "by_staff"),
                        row.getString("body"))
                .fact();
    }
}
