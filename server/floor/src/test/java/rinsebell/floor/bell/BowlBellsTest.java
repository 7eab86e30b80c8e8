package rinsebell.floor.bell;

import static rinsebell.floor.bell.BellKind.BOWL_WAITING;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import org.junit.jupiter.api.Test;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/** A bowl that waits: quiet question at 6 minutes, low at 15, medium at its usable end. House numbers. */
class BowlBellsTest {
    private final Story story = Story.begins();

    private BowlId mixedAtTen(long usableFor) {
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).usableThenRinse(minutes(usableFor));
        return story.at("10:00").mixes(g(60, powder.typedIn()));
    }

    @Test
    void itAsksThenRingsLowThenMediumAtItsUsableEnd() {
        mixedAtTen(60);
        assertRings(
                story.floor(),
                BOWL_WAITING,
                "10:06 SOON SILENT STYLIST",
                "10:15 DUE LOW STYLIST",
                "11:00 PAST MEDIUM STYLIST");
    }

    @Test
    void withoutAUsableEndItStaysLow() {
        story.at("10:00").mixes(g(60, leaflet("clear", Kind.CLEAR_ADDITIVE).typedIn()));
        assertRings(story.floor(), BOWL_WAITING, "10:06 SOON SILENT STYLIST", "10:15 DUE LOW STYLIST");
    }

    @Test
    void aVeryShortOneIsPastBeforeTheHouseWouldAsk() {
        mixedAtTen(10);
        assertRings(story.floor(), BOWL_WAITING, "10:06 SOON SILENT STYLIST", "10:10 PAST MEDIUM STYLIST");
    }

    @Test
    void onePastAtTheQuestionIsPast() {
        mixedAtTen(6);
        assertRings(story.floor(), BOWL_WAITING, "10:06 PAST MEDIUM STYLIST");
    }

    @Test
    void itEndsWhenPutOn() {
        var bowl = mixedAtTen(60);
        var head = story.arrivesFine();
        var on = head.puts(bowl, offScalp(Area.LENGTHS));
        assertQuiet(story.floor(), BOWL_WAITING);
        story.withdraws(on.value());
        assertRings(
                story.floor(),
                BOWL_WAITING,
                "10:06 SOON SILENT STYLIST",
                "10:15 DUE LOW STYLIST",
                "11:00 PAST MEDIUM STYLIST");
    }

    @Test
    void itEndsWhenThrownAway() {
        story.tells(new DayEvent.ThrownAway(mixedAtTen(60)));
        assertQuiet(story.floor(), BOWL_WAITING);
    }

    @Test
    void dividedItWaitsAsTheNewBowlWithTheSameMixingTime() {
        var bowl = mixedAtTen(60);
        story.at("10:10").divides(bowl);
        assertRings(
                story.floor(),
                BOWL_WAITING,
                "10:06 SOON SILENT STYLIST",
                "10:15 DUE LOW STYLIST",
                "11:00 PAST MEDIUM STYLIST");
    }
}
