package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;

/** When something came off, against when it had to. The powder is usable for an hour and then must be off: hard. */
class RinseLatenessTest {
    private final Story story = Story.begins();
    private final Head head = story.at("10:00").arrivesFine();

    private RinseLateness only() {
        var all = RinseLateness.of(story.floor(), Saturday.DATE);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    /** Mixed and on at 10:00: develops until 10:55, longest on until 10:50, which comes first. */
    @ParameterizedTest
    @CsvSource({"10:49:59.999, -1, false", "10:50, 0, false", "10:50:00.001, 1, true"})
    void againstTheEarliestTerm(String rinsed, long lateMillis, boolean isLate) {
        var on = head.puts(story.mixes(g(60, Shelf.POWDER)), offScalp(Area.LENGTHS));
        story.at(rinsed);
        head.rinses(on);

        assertThat(only().late()).isEqualTo(Duration.ofMillis(lateMillis));
        assertThat(only().isLate()).isEqualTo(isLate);
        assertThat(only().rinseBy().why()).isEqualTo(Limit.Why.LONGEST_ON);
        assertThat(only().rinseBy().hard()).isTrue();
        assertThat(only().stylist()).isEqualTo(story.stylist());
    }

    @Test
    void asFinallyKnown() {
        var on = head.puts(story.mixes(g(60, Shelf.POWDER)), offScalp(Area.LENGTHS));
        story.at("10:58");
        var rinse = head.rinses(on);
        story.at("12:00").setsBack(rinse, "10:51");

        assertThat(only().late()).isEqualTo(minutes(1));
    }

    /** The scalp said rinse at 10:30, a minute's walk from the basin; a look after the rinse takes nothing of that back. */
    @Test
    void whatHappensAfterTheRinseChangesNothing() {
        var on = head.puts(story.mixes(g(60, Shelf.MILD_CREAM)), onScalp(Area.REGROWTH));
        story.at("10:30");
        head.scalpIs(ScalpCheck.Finding.PINK, CheckDecision.RINSE);
        story.at("10:36");
        head.rinses(on);
        story.at("10:40");
        head.scalpIs(ScalpCheck.Finding.FINE);
        head.complains(Complaint.Grade.TINGLING);

        assertThat(only().rinseBy().at()).isEqualTo(at("10:31"));
        assertThat(only().late()).isEqualTo(minutes(5));
    }

    @Test
    void whatWentOverItCountsToo() {
        var first = head.puts(story.mixes(g(60, Shelf.POWDER)), offScalp(Area.LENGTHS));
        story.at("10:20");
        var second = head.puts(story.mixes(g(60, Shelf.POWDER)), offScalp(Area.LENGTHS));
        story.at("10:52");
        head.rinses(second);

        assertThat(RinseLateness.of(story.floor(), Saturday.DATE))
                .extracting(RinseLateness::application)
                .containsExactly(first, second);
    }

    @Test
    void ofThatDayAlone() {
        againstTheEarliestTerm("10:50", 0, false);
        assertThat(RinseLateness.of(story.floor(), Saturday.DATE.plusDays(1))).isEmpty();
        assertThat(RinseLateness.of(story.floor(), Saturday.DATE.minusDays(1))).isEmpty();
    }
}
