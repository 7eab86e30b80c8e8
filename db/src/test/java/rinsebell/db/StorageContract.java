package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.db.codec.EventSamples;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.Stream;
import rinsebell.floor.TextId;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/** What every store promises, whatever it is made of. */
abstract class StorageContract {

    private SalonStore store;

    /** Opens the same store each time it is called within a test. */
    abstract SalonStore open() throws Exception;

    @BeforeEach
    void openNew() throws Exception {
        store = open();
    }

    @AfterEach
    void close() throws Exception {
        store.close();
    }

    private void reopen() throws Exception {
        store.close();
        store = open();
    }

    @Test
    void aNewStoreIsEmpty() {
        assertThat(store.load()).isEmpty();
        assertThat(store.lastSeq()).isZero();
        assertThat(store.press("press-1")).isEmpty();
        assertThat(store.lastRebuild()).isEmpty();
    }

    @Test
    void everyKindOfFactComesBackAsItWas() throws Exception {
        List<Fact> facts = new ArrayList<>();
        for (Event event : EventSamples.all()) {
            facts.add(new Fact(facts.size() + 1L, Stream.day(DATE), TEN, TEN.plusMillis(1), new StaffId(4), event));
        }
        Told.save(store, facts);
        reopen();

        assertThat(store.facts(Stream.day(DATE))).isEqualTo(facts);
        assertThat(store.lastSeq()).isEqualTo(facts.size());
    }

    @Test
    void factsStayInTheirStreams() throws Exception {
        Story story = aBusyMorning();
        Told.save(store, story.facts());

        for (Stream stream : Set.copyOf(story.facts().stream().map(Fact::stream).toList())) {
            assertThat(store.facts(stream))
                    .isEqualTo(story.facts().stream()
                            .filter(fact -> fact.stream().equals(stream))
                            .toList());
        }
        assertThat(store.facts(Stream.visit(new VisitId(999)))).isEmpty();
    }

    @Test
    void aPressIsKnownByWhatItAskedAndWhatItWasAnswered() throws Exception {
        Fact fact = aBusyMorning().facts().get(0);
        store.append(List.of(Told.press(fact), Told.refusal("no")));
        AnsweredPress accepted = new AnsweredPress("tablet", "hash of press-1", "{\"said\":\"press-1\"}");
        AnsweredPress refused = new AnsweredPress("tablet", "hash of no", "{\"refused\":true}");

        assertThat(store.press("press-1")).contains(accepted);
        assertThat(store.press("no")).contains(refused);
        reopen();
        assertThat(store.press("press-1")).contains(accepted);
        assertThat(store.press("no")).contains(refused);
        assertThat(store.press("other")).isEmpty();
    }

    @Test
    void aRefusalAloneIsKeptToo() throws Exception {
        store.append(List.of(Told.refusal("no")));
        reopen();

        assertThat(store.press("no")).isPresent();
        assertThat(store.load()).isEmpty();
    }

    @Test
    void textsAreFoundByTheirFacts() throws Exception {
        Story story = Story.begins();
        long one = story.arrives().id().value();
        long two = story.arrives().id().value();
        Told.save(store, story.facts());
        reopen();

        assertThat(store.texts(List.of(new TextId(one), new TextId(two), new TextId(99))))
                .isEqualTo(Map.of(new TextId(one), Told.label(one), new TextId(two), Told.label(two)));
        assertThat(store.texts(List.of())).isEmpty();
    }

    @Test
    void aPressOfSeveralFactsAndSeveralPressesAreSavedTogether() throws Exception {
        List<Fact> facts = aBusyMorning().facts();
        Entry several = Told.press(facts.subList(0, 3).toArray(Fact[]::new));
        store.append(List.of(several, Told.press(facts.get(3)), Told.refusal("no"), Told.press(facts.get(4))));
        reopen();

        assertThat(store.load()).isEqualTo(facts.subList(0, 5));
    }

    @Test
    void aNumberLeftOutIsABugAndNothingIsSaved() throws Exception {
        List<Fact> facts = aBusyMorning().facts();

        assertThatThrownBy(() -> store.append(List.of(Told.press(facts.get(0)), Told.press(facts.get(2)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 comes next");
        reopen();
        assertThat(store.load()).isEmpty();
    }

    @Test
    void theFloorOfAFirstDayIsWhole() throws Exception {
        Story story = aBusyMorning();
        Told.save(store, story.facts());
        reopen();

        assertThat(store.load()).isEqualTo(story.facts());
    }

    /** What a restart loads is what a floor that never stopped has: it was cut down at each day's end. */
    @Test
    void afterADaysEndARestartLoadsWhatAFloorThatNeverStoppedHas() throws Exception {
        Story story = aBusyMorning();
        Head stays = overnight(story);
        Floor floor = turned(story);
        story.tells(new DayEvent.CaughtUp());
        story.mixes(g(30, MILD_CREAM));
        Head came = story.arrives();
        came.leaves();
        stays.scalpIs(ScalpCheck.Finding.FINE);
        Told.save(store, story.facts());
        reopen();

        Floor running = floor.with(
                story.facts().subList((int) floor.lastSeq(), story.facts().size()));
        assertThat(store.load()).isEqualTo(running.facts());
        assertThat(running.visits()).hasSize(3);
    }

    /** A head that was on overnight is rinsed at noon, and only then the day before can end. */
    @Test
    void aDayThatEndsLateKeepsWhoCameOnTheNext() throws Exception {
        Story story = Story.begins();
        Head stays = overnight(story);
        story.at(Saturday.on(DATE.plusDays(1), "09:00"));
        Head came = story.arrives();
        story.mixes(g(30, MILD_CREAM));
        came.leaves();
        story.at(Saturday.on(DATE.plusDays(1), "11:00"));
        stays.rinses(story.floor()
                .visit(stays.id())
                .orElseThrow()
                .applications()
                .get(0)
                .id());
        stays.leaves();
        story.tells(Stream.day(DATE.plusDays(1)), new DayEvent.DayEnded());
        Floor floor = story.floor().turned(story.now());
        Told.save(store, story.facts());
        reopen();

        assertThat(floor.visits()).extracting(Visit::id).containsExactly(came.id());
        assertThat(store.load()).isEqualTo(floor.facts());
    }

    /** The clock stood a day back until somebody confirmed it, and was put forward too far on another day. */
    @ParameterizedTest
    @ValueSource(longs = {14, -14})
    void whatAnOpenVisitRestsOnIsLoadedWhereverTheClockStoodThen(long hours) throws Exception {
        Story story = Story.begins();
        BowlId before = story.at("19:00").mixes(g(60, MILD_CREAM), g(60, DEV20));
        Head stays = story.at("19:05").arrivesFine();
        stays.puts(before, onScalp(Area.REGROWTH));
        story.tells(new DayEvent.ClockShifted(Duration.ofHours(hours)));
        story.at(Saturday.at("19:06").plus(Duration.ofHours(hours)));
        LocalDate today = story.floor().salon().dayOf(story.now());
        story.tells(Stream.day(today), new DayEvent.DayEnded());
        Floor turned = story.floor().turned(story.now());
        assertThat(turned.visits()).containsExactlyElementsOf(story.floor().visits());
        Told.save(store, story.facts());
        reopen();

        assertThat(store.load()).isEqualTo(turned.facts());
        assertThat(Floor.of(store.load()).bowl(before)).isPresent();
    }

    /** Whoever put the clock back goes on in a day that had ended. */
    @Test
    void whatIsRecordedSinceTheDaysEndIsLoadedThoughTheClockWasPutBack() throws Exception {
        Story story = Story.begins();
        Floor floor = turned(story);
        story.tells(new DayEvent.ClockShifted(Duration.ofDays(-1)));
        Head head = story.at("10:00").arrivesFine();
        BowlId bowl = story.mixes(g(60, MILD_CREAM), g(60, DEV20));
        head.puts(bowl, onScalp(Area.REGROWTH));
        Told.save(store, story.facts());
        reopen();

        Floor running = floor.with(
                story.facts().subList((int) floor.lastSeq(), story.facts().size()));
        assertThat(store.load()).isEqualTo(running.facts());
        assertThat(Floor.of(store.load()).bowl(bowl)).isPresent();
    }

    @Test
    void aDayThatNobodyStayedOverIsNotLoadedAnyMore() throws Exception {
        Story story = Story.begins();
        story.arrives().leaves();
        story.mixes(g(30, MILD_CREAM));
        Floor floor = turned(story);
        Told.save(store, story.facts());
        reopen();

        assertThat(store.load()).isEqualTo(floor.facts());
        assertThat(store.load()).extracting(Fact::stream).doesNotContain(Stream.day(DATE));
    }

    @Test
    void anEndedVisitThatWasReopenedIsLoaded() throws Exception {
        Story story = Story.begins();
        Head head = story.arrives();
        long left = head.leaves();
        turned(story);
        story.withdraws(left);
        Told.save(store, story.facts());
        reopen();

        assertThat(Floor.of(store.load()).visit(head.id())).isPresent();
    }

    /** Ends the day on the salon's next day, as the server does. */
    private static Floor turned(Story story) {
        story.at(Saturday.on(DATE.plusDays(1), "05:00")).tells(Stream.day(DATE.plusDays(1)), new DayEvent.DayEnded());
        return story.floor().turned(story.now());
    }

    private static Head overnight(Story story) {
        Head stays = story.at("20:00").arrivesFine();
        stays.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        return stays;
    }

    private static Story aBusyMorning() {
        Story story = Story.begins();
        Head head = story.at("09:00").arrivesFine();
        var bowl = story.mixes(g(60, MILD_CREAM), g(60, DEV20));
        var on = head.puts(bowl, onScalp(Area.REGROWTH));
        story.at("09:10");
        head.lastOn(on);
        story.at("09:30");
        head.rinses(on);
        story.tells(Stream.visit(head.id()), new StayEvent.Left());
        story.arrives();
        return story;
    }
}
