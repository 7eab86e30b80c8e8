package rinsebell.floor.bell;

import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.onScalp;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint.Grade;
import rinsebell.floor.visit.ScalpCheck;

/** Discomfort. Common practice, no source: rinse at once when a scalp burns or itches severely. */
class DiscomfortBellsTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();
    private ApplicationId on = new ApplicationId(0);

    @BeforeEach
    void putOnAtTen() {
        story.at("10:00");
        on = head.puts(story.mixes(g(60, Shelf.STRONG_CREAM), g(60, Shelf.DEV20)), onScalp(Area.REGROWTH));
        story.at("10:10");
    }

    private static BellKind bellOf(Grade grade) {
        return BellKind.valueOf(grade.name());
    }

    @ParameterizedTest
    @CsvSource({"10:09:59.999, false", "10:10, true", "10:10:00.001, true"})
    void tinglingIsMediumUntilTheScalpIsLookedAt(String looked, boolean ends) {
        head.complains(Grade.TINGLING);
        assertRings(story.floor(), BellKind.TINGLING, "10:10 DUE MEDIUM STYLIST");
        story.at(looked);
        head.scalpIs(ScalpCheck.Finding.PINK);
        if (ends) {
            assertQuiet(story.floor(), BellKind.TINGLING);
        } else {
            assertRings(story.floor(), BellKind.TINGLING, "10:10 DUE MEDIUM STYLIST");
        }
    }

    @ParameterizedTest
    @EnumSource(value = Grade.class, mode = Mode.EXCLUDE, names = "TINGLING")
    void worseIsHighForEveryoneUntilItIsOffAndTheScalpWasLookedAt(Grade grade) {
        head.complains(grade);
        assertRings(story.floor(), bellOf(grade), "10:10 DUE HIGH EVERYONE");
        story.at("10:12");
        var look = head.scalpIs(ScalpCheck.Finding.SORE);
        assertRings(story.floor(), bellOf(grade), "10:10 DUE HIGH EVERYONE");
        story.withdraws(look);
        head.rinses(on);
        assertRings(story.floor(), bellOf(grade), "10:10 DUE HIGH EVERYONE");
        head.scalpIs(ScalpCheck.Finding.SORE);
        assertQuiet(story.floor(), bellOf(grade));
    }

    @Test
    void whatWentOnLaterDoesNotKeepItRinging() {
        head.complains(Grade.BURNING);
        story.at("10:12");
        head.rinses(on);
        head.scalpIs(ScalpCheck.Finding.SORE);
        story.at("10:20");
        head.puts(story.mixes(g(40, Shelf.REMOVER)), onScalp(Area.REGROWTH));
        assertQuiet(story.floor(), BellKind.BURNING);
    }

    @Test
    void aCoveredBowlIsNotOff() {
        head.complains(Grade.BURNING);
        story.at("10:12");
        head.puts(story.mixes(g(40, Shelf.REMOVER)), onScalp(Area.REGROWTH));
        head.scalpIs(ScalpCheck.Finding.SORE);
        assertRings(story.floor(), BellKind.BURNING, "10:10 DUE HIGH EVERYONE");
    }

    @Test
    void eachComplaintRingsByItself() {
        head.complains(Grade.TINGLING);
        story.at("10:11");
        head.complains(Grade.BURNING);
        assertRings(story.floor(), BellKind.TINGLING, "10:10 DUE MEDIUM STYLIST");
        assertRings(story.floor(), BellKind.BURNING, "10:11 DUE HIGH EVERYONE");
    }
}
