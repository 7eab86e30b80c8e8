package rinsebell.floor.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.product.Kind.DEPOSIT_COLOUR;
import static rinsebell.floor.product.Kind.POWDER_LIGHTENER;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.product.Directions;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;

/** What several applications on one head mean together: they are rinsed at once. */
class HeadTimingTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();

    private static Directions powder(long from, long to) {
        return leaflet("powder " + from + to, POWDER_LIGHTENER)
                .develops(FROM_FIRST_ON, minutes(from), minutes(to))
                .typedIn();
    }

    private ApplicationId puts(String clock, Directions directions, Area area) {
        story.at(clock);
        var on = head.puts(story.mixes(g(60, directions)), offScalp(area));
        head.lastOn(on);
        return on;
    }

    @Test
    void theWindowIsFromTheLatestReadyToTheEarliestEnd() {
        puts("10:00", powder(20, 50), Area.LENGTHS);
        puts("10:10", powder(25, 45), Area.ENDS);
        assertThat(head.timing().readyFrom()).contains(at("10:35"));
        assertThat(head.timing().rinseBy()).contains(new Limit(Limit.Why.DEVELOPED, at("10:50"), true));
        assertThat(head.timing().hasNoCommonRinse()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"29, false", "30, false", "31, true"})
    void noCommonWindowWhenOneIsReadyAfterAnotherMustBeOff(long from, boolean none) {
        // The first must be off by 10:40, the second is ready from 10:10 + so much.
        puts("10:00", powder(20, 40), Area.LENGTHS);
        puts("10:10", powder(from, 60), Area.ENDS);
        assertThat(head.timing().hasNoCommonRinse()).isEqualTo(none);
    }

    @Test
    void aSingleApplicationHasNoQuestionOfACommonWindow() {
        var alone = leaflet("powder", POWDER_LIGHTENER)
                .develops(FROM_FIRST_ON, minutes(45), minutes(60))
                .longestOn(minutes(30))
                .typedIn();
        puts("10:00", alone, Area.LENGTHS);
        assertThat(head.timing().hasNoCommonRinse()).isFalse();
    }

    @Test
    void oneThatIsReadyTooLateIsEnoughToSayThereIsNoCommonWindow() {
        puts("10:00", powder(20, 40), Area.LENGTHS);
        puts("10:10", powder(35, 60), Area.ENDS);
        story.at("10:15");
        head.puts(story.mixes(g(60, powder(20, 60))), offScalp(Area.HAIRLINE));
        assertThat(head.timing().hasNoCommonRinse()).isTrue();
    }

    @Test
    void readyIsNotKnownWhileLastOnOfOneIsMissing() {
        puts("10:00", powder(20, 40), Area.LENGTHS);
        story.at("10:05");
        head.puts(story.mixes(g(60, powder(20, 40))), offScalp(Area.ENDS));
        assertThat(head.timing().readyFrom()).isEmpty();
    }

    @Test
    void theEarliestHardLimitIsToldFromTheEarliest() {
        var toner = leaflet("toner", DEPOSIT_COLOUR)
                .develops(FROM_FIRST_ON, minutes(5), minutes(20))
                .typedIn();
        puts("10:00", toner, Area.LENGTHS);
        puts("10:00", powder(20, 40), Area.ENDS);
        assertThat(head.timing().rinseBy()).contains(new Limit(Limit.Why.DEVELOPED, at("10:20"), false));
        assertThat(head.timing().hardLimit()).contains(new Limit(Limit.Why.DEVELOPED, at("10:40"), true));
    }

    @ParameterizedTest
    @CsvSource({"LENGTHS, 10:39", "FOILS_ALL, 10:35"})
    void workBeginsSoThatWaterIsOnInTime(Area area, String start) {
        puts("10:00", powder(20, 40), area);
        assertThat(head.timing().startBy(story.floor())).contains(at(start));
    }

    @Test
    void nothingOnHasNoInstants() {
        assertThat(head.timing().isAnythingOn()).isFalse();
        assertThat(head.timing().rinseBy()).isEmpty();
        assertThat(head.timing().readyFrom()).isEmpty();
        var on = puts("10:00", powder(20, 40), Area.LENGTHS);
        assertThat(head.timing().isAnythingOn()).isTrue();
        story.at("10:30");
        head.wipesOff(on);
        assertThat(head.timing().isAnythingOn()).isFalse();
    }

    @Test
    void aRinseTakesWhatWasCoveredAlong() {
        puts("10:00", powder(20, 50), Area.LENGTHS);
        var over = puts("10:20", powder(20, 50), Area.LENGTHS);
        assertThat(head.timing().timings()).hasSize(2);
        story.at("10:40");
        head.rinses(over);
        assertThat(head.timing().isAnythingOn()).isFalse();
    }

    @Test
    void aRinseOfOneSectionLeavesTheOtherOn() {
        var lengths = puts("10:00", powder(20, 50), Area.LENGTHS);
        var ends = puts("10:20", powder(20, 50), Area.ENDS);
        story.at("10:40");
        head.rinses(lengths);
        assertThat(head.timing().timings())
                .extracting(timing -> timing.application().id())
                .containsExactly(ends);
    }
}
