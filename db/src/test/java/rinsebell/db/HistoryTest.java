package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.DEV30;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;

/** The rows that a visit leaves: what its facts come to, whatever is corrected when. */
final class HistoryTest {

    @TempDir
    Path path;

    private Story story;
    private Head head;
    private BowlId bowl;
    private ApplicationId on;
    private long left;

    /** Arrives at nine, a bowl on for half an hour under a cap and steam, leaves at ten. */
    @BeforeEach
    void oneVisit() {
        story = Story.begins();
        head = story.at("09:00").arrivesFine();
        bowl = story.mixes(g("60.5", MILD_CREAM), g(60, DEV20));
        story.at("09:05");
        on = head.puts(bowl, onScalp(Area.REGROWTH));
        story.at("09:10");
        head.lastOn(on);
        head.heats(Heat.GENTLE_STEAM);
        head.covers(on, Cover.CAP);
        story.at("09:20");
        head.looksAgain(on, minutes(5));
        head.scalpIs(ScalpCheck.Finding.PINK);
        head.complains(Complaint.Grade.TINGLING);
        head.heatOff();
        story.at("09:35");
        head.rinses(on);
        story.at("10:00");
        left = head.leaves();
    }

    @Test
    void aVisitThatIsOpenHasOnlyItsOwnRow() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts().subList(0, Math.toIntExact(left) - 1));

            assertThat(column(store, "visit", "left_ms")).containsOnlyNulls().hasSize(1);
            assertThat(rows(store, "bowl")).isEmpty();
            assertThat(rows(store, "application")).isEmpty();
        });
    }

    @Test
    void aVisitThatEndsLeavesItsRows() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());

            Map<String, Object> visit = rows(store, "visit").get(0);
            assertThat(visit)
                    .containsEntry("id", head.id().value())
                    .containsEntry("arrived_ms", at("09:00").toEpochMilli())
                    .containsEntry("left_ms", at("10:00").toEpochMilli())
                    .containsEntry("chair", 1)
                    .containsEntry("stylist", story.stylist().value())
                    .containsEntry("skin_test", "NO_REACTION")
                    .containsEntry("scalp", "FINE");
            assertThat(rows(store, "bowl").get(0))
                    .containsEntry("id", bowl.value())
                    .containsEntry("mixed_ms", at("09:00").toEpochMilli())
                    .containsEntry("reason", "FIRST");
            assertThat(column(store, "portion", "product")).containsExactly(MILD_CREAM.name(), DEV20.name());
            assertThat(column(store, "portion", "grams"))
                    .map(Object::toString)
                    .containsExactly("60.500000", "60.000000");
            assertThat(rows(store, "application").get(0))
                    .containsEntry("id", on.value())
                    .containsEntry("area", "REGROWTH")
                    .containsEntry("zone", "ON_SCALP")
                    .containsEntry("cover", "CAP")
                    .containsEntry("first_on_ms", at("09:05").toEpochMilli())
                    .containsEntry("last_on_ms", at("09:10").toEpochMilli())
                    .containsEntry("ended_ms", at("09:35").toEpochMilli())
                    .containsEntry("ending", "RINSED");
            assertThat(rows(store, "heat").get(0))
                    .containsEntry("heat", "GENTLE_STEAM")
                    .containsEntry("from_ms", at("09:10").toEpochMilli())
                    .containsEntry("until_ms", at("09:20").toEpochMilli());
            assertThat(rows(store, "strand_check").get(0))
                    .containsEntry("decision", "LOOK_AGAIN")
                    .containsEntry("again_ms", minutes(5).toMillis());
            assertThat(rows(store, "scalp_check").get(0))
                    .containsEntry("finding", "PINK")
                    .containsEntry("decision", null);
            assertThat(column(store, "complaint", "grade")).containsExactly("TINGLING");
        });
    }

    @Test
    void aSetBackAfterTheEndMovesTheRow() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            story.at("11:00").setsBack(on.value(), "09:02");
            Told.save(store, story.facts());

            assertThat(column(store, "application", "first_on_ms"))
                    .containsExactly(at("09:02").toEpochMilli());
        });
    }

    @Test
    void aFactWrittenDownAfterTheEndHasItsRow() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            story.at("09:30");
            head.complains(Complaint.Grade.BURNING);
            Told.save(store, story.facts());

            assertThat(column(store, "complaint", "grade")).containsExactly("TINGLING", "BURNING");
        });
    }

    @Test
    void aWithdrawnEndTakesTheRowsBack() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            story.withdraws(left);
            Told.save(store, story.facts());

            assertThat(column(store, "visit", "left_ms")).containsOnlyNulls().hasSize(1);
            assertThat(rows(store, "application")).isEmpty();
        });
    }

    @Test
    void aWithdrawnArrivalLeavesNothing() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            story.withdraws(head.id().value());
            Told.save(store, story.facts());

            assertThat(rows(store, "visit")).isEmpty();
            assertThat(rows(store, "bowl")).isEmpty();
        });
    }

    @Test
    void aRecipeFilledInAfterTheEndIsInTheRowsOfEveryPart() throws Exception {
        Story known = Story.begins();
        BowlId root = known.at("09:00").mixes();
        BowlId part = known.divides(root);
        for (BowlId each : List.of(root, part)) {
            Head one = known.arrivesFine();
            one.rinses(one.puts(each, onScalp(Area.REGROWTH)));
            one.leaves();
        }
        with(path, store -> {
            Told.save(store, known.facts());
            assertThat(rows(store, "portion")).isEmpty();
            known.at("12:00").fills(part, g(30, MILD_CREAM), g(30, DEV30));
            Told.save(store, known.facts());

            assertThat(column(store, "portion", "bowl_id"))
                    .containsExactly(root.value(), root.value(), part.value(), part.value());
        });
    }

    @Test
    void aBowlMixedForThemAndNeverPutOnIsTheirs() throws Exception {
        with(path, store -> {
            Story wasted = Story.begins();
            Head one = wasted.at("09:00").arrives();
            long mixed = wasted.tells(new DayEvent.Mixed(List.of(), BowlReason.TONE, one.id()));
            one.leaves();
            Told.save(store, wasted.facts());
            wasted.at("10:00").tells(new DayEvent.ThrownAway(new BowlId(mixed)));
            Told.save(store, wasted.facts());

            assertThat(rows(store, "bowl").get(0))
                    .containsEntry("id", mixed)
                    .containsEntry("thrown_away_ms", at("10:00").toEpochMilli());
        });
    }

    @Test
    void aClockThatWasWrongMovesTheRowsOfToday() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            story.at("11:00").shiftsClock(Duration.ofMinutes(-30));
            Told.save(store, story.facts());

            assertThat(column(store, "visit", "left_ms"))
                    .containsExactly(at("09:30").toEpochMilli());
        });
    }

    /** A mistake in the rows must not keep a fact out: they can be made again, it can't. */
    @Test
    void rowsThatCannotBeWrittenKeepNoFactOut() throws Exception {
        with(path, store -> {
            store.tables()
                    .database()
                    .jdbi()
                    .useHandle(handle -> handle.execute("alter table complaint rename to hidden"));
            Told.save(store, story.facts());

            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.tables().mark().lines()).isEqualTo(story.facts().size());
            store.tables()
                    .database()
                    .jdbi()
                    .useHandle(handle -> handle.execute("alter table hidden rename to complaint"));
        });
    }

    private static List<Object> column(SalonStore store, String table, String column) {
        return rows(store, table).stream().map(row -> row.get(column)).toList();
    }

    private static List<Map<String, Object>> rows(SalonStore store, String table) {
        return store.tables()
                .database()
                .jdbi()
                .withHandle(handle ->
                        handle.createQuery("select * from " + table + " order by 1, 2").mapToMap().list().stream()
                                .<Map<String, Object>>map(TreeMap::new)
                                .toList());
    }
}
