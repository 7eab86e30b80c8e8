package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.RingLog;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/** What a day that is over is told from. */
final class EarlierDayTest {
    private static final LocalDate SUNDAY = Saturday.DATE.plusDays(1);

    @TempDir
    Path path;

    private Story story;
    private Head head;
    private Head sundays;
    private long rinse;
    private long correction;

    @BeforeEach
    void twoDays() {
        story = Story.begins();
        head = story.at("09:00").arrivesFine();
        head.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), offScalp(Area.LENGTHS));
        story.at("09:52");
        rinse = head.rinses(head.visit().applications().get(0).id());
        head.leaves();
        story.at(Saturday.on(SUNDAY, "09:00"));
        story.policy(Policy.DEFAULT);
        sundays = story.arrives();
        correction = story.setsBack(rinse, "09:51");
        story.at(Saturday.on(SUNDAY, "10:00"));
        sundays.leaves();
    }

    private DayReport report(List<Fact> facts, Instant until) {
        var floor = Floor.of(facts);
        var log = RingLog.of(facts, floor.salon().beginOf(Saturday.DATE), until);
        return DayReport.of(Saturday.DATE, log, floor, List.of());
    }

    /** A bowl of Saturday that was thrown away on Sunday; neither the set-up nor a head. */
    @Test
    void severalDaysHaveWhatIsAboutNoHead() throws Exception {
        var bowl = new BowlId(story.at("11:00").tells(new DayEvent.Mixed(List.of(), BowlReason.FIRST, null)));
        var thrown = story.at(Saturday.on(SUNDAY, "11:00")).tells(new DayEvent.ThrownAway(bowl));
        with(path, store -> {
            Told.save(store, story.facts());

            assertThat(store.facts(Saturday.DATE, SUNDAY))
                    .extracting(Fact::seq)
                    .contains(bowl.value(), thrown)
                    .isSorted();
            assertThat(store.facts(Saturday.DATE, SUNDAY)).allMatch(fact -> fact.stream() instanceof Stream.OfDay);
            assertThat(store.facts(Saturday.DATE, Saturday.DATE))
                    .extracting(Fact::seq)
                    .contains(bowl.value())
                    .doesNotContain(thrown);
            assertThat(store.facts(SUNDAY, SUNDAY)).extracting(Fact::seq).containsExactly(thrown);
        });
    }

    @Test
    void itHasEverybodyWhoWasThereAndWhatWasSaidLater() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());

            var facts = store.facts(Saturday.DATE);
            assertThat(facts).isSortedAccordingTo((one, other) -> Long.compare(one.seq(), other.seq()));
            assertThat(facts)
                    .extracting(Fact::seq)
                    .containsAll(seqs(Stream.visit(head.id())))
                    .contains(correction)
                    .doesNotContainAnyElementsOf(seqs(Stream.visit(sundays.id())));
            assertThat(report(facts, Saturday.on(SUNDAY, "04:00")).rinses())
                    .singleElement()
                    .matches(one -> one.late().equals(minutes(1)));
        });
    }

    /** What rang is no matter of what was said later: on the evening itself it is told the same. */
    @Test
    void itRangAsItDidOnTheEvening() throws Exception {
        var evening = story.facts().stream()
                .filter(fact -> fact.recorded().isBefore(Saturday.at("20:00")))
                .toList();
        with(path, store -> {
            Told.save(store, story.facts());

            var rings = report(store.facts(Saturday.DATE), Saturday.on(SUNDAY, "04:00"))
                    .rings();
            assertThat(rings)
                    .isNotEmpty()
                    .isEqualTo(report(evening, Saturday.at("20:00")).rings());
        });
    }

    /** The house's numbers of the next day are not those of this one. */
    @Test
    void theSetUpIsThatOfItsEnd() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());

            assertThat(store.facts(Saturday.DATE)).noneMatch(EarlierDayTest::isPolicy);
            assertThat(store.facts(SUNDAY)).anyMatch(EarlierDayTest::isPolicy);
        });
    }

    /** Nobody said that she had left, until somebody did on Tuesday: her bowl was mixed on Sunday. */
    @Test
    void itHasTheBowlsOfWhoeverStayedForDays() throws Exception {
        var tuesday = SUNDAY.plusDays(2);
        story.at(Saturday.on(SUNDAY, "11:00"));
        var stays = story.arrivesFine();
        stays.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), offScalp(Area.LENGTHS));
        story.at(Saturday.on(tuesday, "09:00"));
        stays.leaves();
        with(path, store -> {
            Told.save(store, story.facts());

            assertThat(store.facts(tuesday))
                    .extracting(Fact::seq)
                    .containsAll(seqs(Stream.visit(stays.id())))
                    .containsAll(seqs(Stream.day(SUNDAY)));
        });
    }

    private static boolean isPolicy(Fact fact) {
        return fact.event() instanceof rinsebell.floor.salon.SalonEvent.PolicySet;
    }

    private List<Long> seqs(Stream stream) {
        return story.facts().stream()
                .filter(fact -> fact.stream().equals(stream) && fact.seq() != correction)
                .map(Fact::seq)
                .toList();
    }
}
