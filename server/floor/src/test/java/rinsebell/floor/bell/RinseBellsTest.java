package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.RINSE;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;

/** The rinse: soon, work begins, now, past it. The house walks a minute, takes foils out in four, says soon five before. */
class RinseBellsTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();

    private ApplicationId puts(Leaflet leaflet, Where where) {
        story.at("10:00");
        return head.puts(story.mixes(g(60, leaflet.typedIn())), where);
    }

    private static Leaflet powder(long longestOn) {
        return leaflet("powder", Kind.POWDER_LIGHTENER).longestOn(minutes(longestOn));
    }

    private static Leaflet toner(long to) {
        return leaflet("toner", Kind.DEPOSIT_COLOUR).develops(FROM_FIRST_ON, minutes(1), minutes(to));
    }

    @Test
    void aHardLimitIsHighAndAMinutePastItForEveryone() {
        puts(powder(40), offScalp(Area.LENGTHS));
        assertRings(
                story.floor(),
                RINSE,
                "10:34 SOON SILENT BASINS",
                "10:39 START MEDIUM BASINS",
                "10:40 DUE HIGH BASINS",
                "10:41 PAST HIGH EVERYONE");
    }

    @Test
    void aSoftLimitStaysMedium() {
        puts(toner(40), offScalp(Area.LENGTHS));
        assertRings(
                story.floor(),
                RINSE,
                "10:34 SOON SILENT BASINS",
                "10:39 START MEDIUM BASINS",
                "10:40 DUE MEDIUM BASINS");
    }

    @Test
    void aSoftLimitIsFollowedByTheHardOneBehindIt() {
        puts(powder(40), offScalp(Area.LENGTHS).planned(minutes(30)));
        assertRings(
                story.floor(),
                RINSE,
                "10:24 SOON SILENT BASINS",
                "10:29 START MEDIUM BASINS",
                "10:30 DUE MEDIUM BASINS",
                "10:40 DUE HIGH BASINS",
                "10:41 PAST HIGH EVERYONE");
    }

    @Test
    void foilsComeOutFirst() {
        puts(powder(40), offScalp(Area.FOILS_ALL));
        assertRings(
                story.floor(),
                RINSE,
                "10:30 SOON SILENT BASINS",
                "10:35 START MEDIUM BASINS",
                "10:40 DUE HIGH BASINS",
                "10:41 PAST HIGH EVERYONE");
    }

    @Test
    void aShortDevelopmentIsNotAllWarning() {
        // A quarter of eight minutes is two, of two minutes half a one.
        puts(toner(8), offScalp(Area.LENGTHS));
        assertRings(
                story.floor(),
                RINSE,
                "10:05 SOON SILENT BASINS",
                "10:07 START MEDIUM BASINS",
                "10:08 DUE MEDIUM BASINS");
        puts(toner(2), offScalp(Area.LENGTHS));
        assertRings(
                story.floor(),
                RINSE,
                "10:01 SOON SILENT BASINS",
                "10:01:30 START MEDIUM BASINS",
                "10:02 DUE MEDIUM BASINS");
    }

    @Test
    void whatIsOnAHeadIsOneRinse() {
        puts(powder(40), offScalp(Area.LENGTHS));
        puts(toner(20), offScalp(Area.ENDS));
        assertRings(
                story.floor(),
                RINSE,
                "10:14 SOON SILENT BASINS",
                "10:19 START MEDIUM BASINS",
                "10:20 DUE MEDIUM BASINS",
                "10:40 DUE HIGH BASINS",
                "10:41 PAST HIGH EVERYONE");
    }

    @Test
    void itEndsWithTheEnding() {
        var on = puts(powder(40), offScalp(Area.LENGTHS));
        story.at("10:41");
        head.rinses(on);
        assertQuiet(story.floor(), RINSE);
    }

    @Test
    void aCheckThatSaysRinseRings() {
        var on = puts(powder(40), offScalp(Area.LENGTHS));
        story.at("10:20");
        head.saysRinse(on);
        assertRings(
                story.floor(),
                RINSE,
                "10:15 SOON SILENT BASINS",
                "10:20 START MEDIUM BASINS",
                "10:21 DUE HIGH BASINS",
                "10:22 PAST HIGH EVERYONE");
    }

    @Test
    void withoutALimitNoRinseRings() {
        puts(leaflet("clear", Kind.CLEAR_ADDITIVE), offScalp(Area.LENGTHS));
        assertQuiet(story.floor(), RINSE);
    }

    @Test
    void whereDiscomfortAsksForItThatBellRingsInstead() {
        var on = puts(powder(40), offScalp(Area.LENGTHS));
        story.at("10:10");
        head.complains(Complaint.Grade.BURNING);
        assertQuiet(story.floor(), RINSE);
        assertThat(bell(story.floor(), BellKind.BURNING).at(story.now())).isPresent();
        head.rinses(on);
        head.scalpIs(ScalpCheck.Finding.PINK);
        story.at("10:20");
        head.puts(story.mixes(g(60, powder(40).typedIn())), offScalp(Area.LENGTHS));
        assertThat(bell(story.floor(), RINSE).at(story.now()))
                .as("the next round has its own")
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(value = Complaint.Grade.class, mode = EnumSource.Mode.EXCLUDE, names = "TINGLING")
    void onceThatBellWasSeenTheRinseRingsAsItWouldHaveWithoutTheComplaint(Complaint.Grade grade) {
        puts(powder(40), offScalp(Area.LENGTHS).planned(minutes(30)));
        var without = bell(story.floor(), RINSE).stages();
        story.at("10:10");
        head.complains(grade);
        story.at("10:12");
        story.acknowledges(bell(story.floor(), BellKind.valueOf(grade.name())));
        assertThat(bell(story.floor(), RINSE).stages()).isEqualTo(without);
        assertRings(
                story.floor(),
                RINSE,
                "10:24 SOON SILENT BASINS",
                "10:29 START MEDIUM BASINS",
                "10:30 DUE MEDIUM BASINS",
                "10:40 DUE HIGH BASINS",
                "10:41 PAST HIGH EVERYONE");
    }

    @Test
    void aFurtherComplaintRingsInsteadAgainUntilItIsSeenToo() {
        puts(powder(40), offScalp(Area.LENGTHS));
        story.at("10:10");
        head.complains(Complaint.Grade.BURNING);
        story.acknowledges(bell(story.floor(), BellKind.BURNING));
        story.at("10:15");
        head.complains(Complaint.Grade.HOT_FOIL);
        assertQuiet(story.floor(), RINSE);
        story.acknowledges(bell(story.floor(), BellKind.HOT_FOIL));
        assertThat(bell(story.floor(), RINSE).stages()).hasSize(4);
    }

    @Test
    void aSetBackMovesTheBellAndItStaysTheSame() {
        var on = puts(powder(40), offScalp(Area.LENGTHS));
        var before = bell(story.floor(), RINSE).key();
        story.at("10:10").setsBack(on.value(), "09:55");
        assertThat(bell(story.floor(), RINSE).key()).isEqualTo(before);
        assertRings(
                story.floor(),
                RINSE,
                "10:29 SOON SILENT BASINS",
                "10:34 START MEDIUM BASINS",
                "10:35 DUE HIGH BASINS",
                "10:36 PAST HIGH EVERYONE");
    }
}
