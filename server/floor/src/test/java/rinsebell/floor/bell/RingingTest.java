package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.AlarmState.ACKNOWLEDGED;
import static rinsebell.floor.bell.AlarmState.NORMAL;
import static rinsebell.floor.bell.AlarmState.SHELVED;
import static rinsebell.floor.bell.AlarmState.UNACKNOWLEDGED;
import static rinsebell.floor.bell.BellKind.LAST_ON_MISSING;
import static rinsebell.floor.bell.BellKind.PASSED_GATE;
import static rinsebell.floor.bell.BellKind.STRAND_CHECK;
import static rinsebell.floor.bell.BellKind.TINGLING;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.StayEvent;

/**
 * Who hears a bell, and when it is quiet. The delays are the house's to begin with: 2 min to the next people of a medium
 * bell, 30 s of a high one; seen, it rings again after 5 and 2 min.
 */
class RingingTest {
    private final Story story = Story.begins();
    private final StaffId own = story.stylist();
    private final StaffId other = enters(Role.STYLIST);
    private final StaffId assistant = story.assistant();
    private final StaffId desk = enters(Role.DESK);
    private final Head head = story.at("09:50").arrivesFine();

    private StaffId enters(Role role) {
        return new StaffId(story.tells(rinsebell.floor.Stream.SALON, new SalonEvent.StaffEntered(role)));
    }

    private boolean hears(StaffId person, BellKind kind, String clock) {
        return reaches(new Ear.Of(person), kind, clock);
    }

    private boolean reaches(Ear ear, BellKind kind, String clock) {
        return bell(story.floor(), kind)
                .ring(at(clock))
                .map(Ring::reach)
                .filter(reach -> reach.reaches(ear))
                .isPresent();
    }

    private AlarmState state(BellKind kind, String clock) {
        return bell(story.floor(), kind).state(at(clock));
    }

    private void tinglesAt(String clock) {
        story.at("09:55");
        head.puts(story.mixes(g(60, Shelf.MILD_CREAM)), offScalp(Area.LENGTHS));
        story.at(clock);
        head.complains(Complaint.Grade.TINGLING);
    }

    @ParameterizedTest
    @CsvSource({
        "10:00,        true, false, false, false",
        "10:01:59.999, true, false, false, false",
        "10:02,        true, true,  false, false",
        "10:03:59.999, true, true,  false, false",
        "10:04,        true, true,  true,  false",
        "10:05:59.999, true, true,  true,  false",
        "10:06,        true, true,  true,  true",
        "12:00,        true, true,  true,  true"
    })
    void aMediumBellThatNobodySeesCallsTheAssistantsThenTheStylistsThenEveryone(
            String clock, boolean own, boolean assistant, boolean other, boolean desk) {
        tinglesAt("10:00");
        assertThat(Stream.of(this.own, this.assistant, this.other, this.desk)
                        .map(person -> hears(person, TINGLING, clock)))
                .containsExactly(own, assistant, other, desk);
    }

    /** A look that was due at 10:05 is medium at 10:07 and high at 10:10. */
    @Test
    void aHighBellWaitsHalfAMinuteAndNoLouderStageCallsFewer() {
        strandEvery(5);
        assertThat(hears(assistant, STRAND_CHECK, "10:08:59.999")).isFalse();
        assertThat(hears(assistant, STRAND_CHECK, "10:09")).isTrue();
        assertThat(hears(assistant, STRAND_CHECK, "10:10")).isTrue();
        assertThat(hears(other, STRAND_CHECK, "10:10:29.999")).isFalse();
        assertThat(hears(other, STRAND_CHECK, "10:10:30")).isTrue();
        assertThat(hears(desk, STRAND_CHECK, "10:10:59.999")).isFalse();
        assertThat(hears(desk, STRAND_CHECK, "10:11")).isTrue();
    }

    private void strandEvery(int minutes) {
        story.at("10:00");
        var cream = leaflet("cream", Kind.MILD_CREAM_LIGHTENER).strandEvery(minutes(minutes), null);
        head.lastOn(head.puts(story.mixes(g(60, cream.typedIn())), offScalp(Area.ENDS)));
    }

    @Test
    void whoIsOnABreakIsPassedOverAtOnce() {
        story.at("09:59").tells(new DayEvent.BreakBegan(own));
        tinglesAt("10:00");
        assertThat(hears(own, TINGLING, "10:00")).isFalse();
        assertThat(hears(assistant, TINGLING, "10:00")).isTrue();
        assertThat(hears(other, TINGLING, "10:00")).isFalse();
    }

    @Test
    void withNobodyElseAtWorkEveryoneIsCalledAtOnce() {
        story.at("09:59").tells(new DayEvent.BreakBegan(own));
        story.tells(new DayEvent.BreakBegan(assistant));
        story.tells(new DayEvent.BreakBegan(other));
        tinglesAt("10:00");
        assertThat(hears(desk, TINGLING, "10:00")).isTrue();
    }

    @Test
    void theHelperOfThatHeadIsCalledWithTheAssistants() {
        var helper = enters(Role.STYLIST);
        story.at("09:59").tells(head, new StayEvent.HandedOver(own, helper));
        tinglesAt("10:00");
        assertThat(hears(helper, TINGLING, "10:01:59.999")).isFalse();
        assertThat(hears(helper, TINGLING, "10:02")).isTrue();
        assertThat(hears(other, TINGLING, "10:02")).isFalse();
    }

    @Test
    void itRingsWhereTheClientIsNow() {
        tinglesAt("10:00");
        var chair = new Ear.At(Place.chair(1));
        var basin = new Ear.At(Place.basin(1));
        assertThat(reaches(chair, TINGLING, "10:01")).isTrue();
        assertThat(reaches(basin, TINGLING, "10:01")).isFalse();
        story.at("10:01").tells(head, new StayEvent.Moved(Place.basin(1)));
        assertThat(reaches(chair, TINGLING, "10:01")).isFalse();
        assertThat(reaches(basin, TINGLING, "10:01")).isTrue();
    }

    @Test
    void aRinseIsForTheBasinsTheStylistAndTheWallAtOnceAndForEveryoneAMinutePastAHardLimit() {
        story.at("10:00");
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).longestOn(minutes(40));
        head.lastOn(head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS)));
        for (var crowd : new Crowd[] {Crowd.ASSISTANTS, Crowd.WALL}) {
            assertThat(reaches(new Ear.Shared(crowd), BellKind.RINSE, "10:39")).isTrue();
        }
        assertThat(hears(own, BellKind.RINSE, "10:39")).isTrue();
        assertThat(hears(other, BellKind.RINSE, "10:40:29.999")).isFalse();
        assertThat(hears(other, BellKind.RINSE, "10:40:30")).isTrue();
        assertThat(hears(desk, BellKind.RINSE, "10:40:59.999")).isFalse();
        assertThat(hears(desk, BellKind.RINSE, "10:41")).isTrue();
    }

    @Test
    void aLowBellCallsNobodyFurther() {
        story.at("10:00");
        head.puts(story.mixes(g(60, Shelf.MILD_CREAM)), offScalp(Area.LENGTHS));
        assertThat(hears(own, LAST_ON_MISSING, "10:20")).isTrue();
        assertThat(hears(assistant, LAST_ON_MISSING, "11:20")).isFalse();
    }

    @Test
    void whatWasSeenIsQuietAndRingsAgainFirstForWhomItIs() {
        tinglesAt("10:00");
        story.at("10:03");
        story.acknowledges(bell(story.floor(), TINGLING));
        assertThat(state(TINGLING, "10:02:59.999")).isEqualTo(UNACKNOWLEDGED);
        assertThat(state(TINGLING, "10:03")).isEqualTo(ACKNOWLEDGED);
        assertThat(state(TINGLING, "10:07:59.999")).isEqualTo(ACKNOWLEDGED);
        assertThat(state(TINGLING, "10:08")).isEqualTo(UNACKNOWLEDGED);
        assertThat(hears(own, TINGLING, "10:05")).isFalse();
        assertThat(hears(own, TINGLING, "10:08")).isTrue();
        assertThat(hears(assistant, TINGLING, "10:09:59.999")).isFalse();
        assertThat(hears(assistant, TINGLING, "10:10")).isTrue();
    }

    @Test
    void ofTwoWhoSeeItTheLaterCounts() {
        tinglesAt("10:00");
        story.at("10:01");
        story.acknowledges(bell(story.floor(), TINGLING));
        story.at("10:05");
        story.acknowledges(bell(story.floor(), TINGLING));
        assertThat(state(TINGLING, "10:06")).isEqualTo(ACKNOWLEDGED);
        assertThat(state(TINGLING, "10:09:59.999")).isEqualTo(ACKNOWLEDGED);
        assertThat(state(TINGLING, "10:10")).isEqualTo(UNACKNOWLEDGED);
    }

    @Test
    void whatIsPutOnTheShelfReturnsByItself() {
        tinglesAt("10:00");
        story.at("10:01");
        story.shelves(bell(story.floor(), TINGLING), minutes(3));
        assertThat(state(TINGLING, "10:00:59.999")).isEqualTo(UNACKNOWLEDGED);
        assertThat(state(TINGLING, "10:01")).isEqualTo(SHELVED);
        assertThat(state(TINGLING, "10:03:59.999")).isEqualTo(SHELVED);
        assertThat(state(TINGLING, "10:04")).isEqualTo(UNACKNOWLEDGED);
        assertThat(hears(own, TINGLING, "10:02")).isFalse();
        assertThat(hears(own, TINGLING, "10:04")).isTrue();
        assertThat(bell(story.floor(), TINGLING).onShelf(at("10:02"))).isPresent();
        assertThat(bell(story.floor(), TINGLING).onShelf(at("10:04"))).isEmpty();
    }

    @Test
    void aFurtherStageReturnsFromTheShelf() {
        strandEvery(10);
        story.at("10:12");
        story.shelves(bell(story.floor(), STRAND_CHECK), minutes(5));
        assertThat(state(STRAND_CHECK, "10:14:59.999")).isEqualTo(SHELVED);
        assertThat(state(STRAND_CHECK, "10:15")).isEqualTo(UNACKNOWLEDGED);
    }

    @Test
    void aPromptThatIsSeenIsNoAlarm() {
        strandEvery(10);
        assertThat(state(STRAND_CHECK, "10:10")).isEqualTo(NORMAL);
        assertThat(reaches(new Ear.Everything(), STRAND_CHECK, "10:11")).isFalse();
    }

    @Test
    void aPassedGateRingsAgainUntilSomebodySaysWhy() {
        story.at("09:58");
        head.answers(Gates.fineBut(Scalp.SORE));
        story.at("10:00");
        head.puts(story.mixes(g(60, Shelf.MILD_CREAM)), onScalp(Area.REGROWTH));
        story.acknowledges(bell(story.floor(), PASSED_GATE));
        assertThat(state(PASSED_GATE, "10:01:59.999")).isEqualTo(ACKNOWLEDGED);
        assertThat(state(PASSED_GATE, "10:02")).isEqualTo(UNACKNOWLEDGED);
        story.at("10:03");
        story.explains(bell(story.floor(), PASSED_GATE));
        assertThat(state(PASSED_GATE, "10:03")).isEqualTo(ACKNOWLEDGED);
        assertThat(state(PASSED_GATE, "12:00")).isEqualTo(ACKNOWLEDGED);
    }
}
