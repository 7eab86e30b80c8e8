package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.SCALP_CHECK;
import static rinsebell.floor.bell.BellKind.STRAND_CHECK;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Ringing.assertStages;
import static rinsebell.floor.testing.Ringing.bells;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.testing.Ringing;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;

/** A look that is due prompts in silence, is medium 2 minutes late and high 5 (2 with heat, or on scalp). */
class CheckBellsTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();

    private static Leaflet everyTen() {
        return leaflet("cream", Kind.MILD_CREAM_LIGHTENER)
                .allows(Heat.GENTLE_STEAM)
                .strandEvery(minutes(10), null);
    }

    /** First on and last on at once. */
    private ApplicationId puts(Head whose, String clock, Leaflet leaflet, Where where) {
        story.at(clock);
        var on = whose.puts(story.mixes(g(60, leaflet.typedIn())), where);
        whose.lastOn(on);
        return on;
    }

    @Test
    void offScalpWithoutHeat() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:12 LATE MEDIUM STYLIST",
                "10:15 LATE HIGH STYLIST");
    }

    @Test
    void withHeatItIsHighSooner() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        head.heats(Heat.GENTLE_STEAM);
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:12 LATE MEDIUM STYLIST",
                "10:12 LATE HIGH STYLIST");
    }

    @Test
    void onScalpItIsHighSooner() {
        puts(head, "10:00", everyTen().scalpEvery(minutes(20), null), onScalp(Area.REGROWTH));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:12 LATE MEDIUM STYLIST",
                "10:12 LATE HIGH STYLIST");
        assertRings(
                story.floor(),
                SCALP_CHECK,
                "10:20 DUE SILENT STYLIST",
                "10:22 LATE MEDIUM STYLIST",
                "10:22 LATE HIGH STYLIST");
    }

    @Test
    void aLookOfItsKindEndsItAndTheNextCountsFromThere() {
        var on = puts(head, "10:00", everyTen().scalpEvery(minutes(30), null), onScalp(Area.REGROWTH));
        story.at("10:12");
        head.scalpIs(ScalpCheck.Finding.FINE);
        assertThat(bells(story.floor(), STRAND_CHECK).get(0).at(story.now()))
                .as("a look at the scalp is none at a strand")
                .isPresent();
        head.checks(on);
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:22 DUE SILENT STYLIST",
                "10:24 LATE MEDIUM STYLIST",
                "10:24 LATE HIGH STYLIST");
    }

    @Test
    void noneAfterRinseWasDecidedNorAfterTheRinse() {
        var on = puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        story.at("10:12");
        head.saysRinse(on);
        assertQuiet(story.floor(), STRAND_CHECK);
        head.rinses(on);
        assertQuiet(story.floor(), STRAND_CHECK);
    }

    @Test
    void nothingRingsForWhoeverIsStillApplyingThatHead() {
        story.at("10:00");
        var on = head.puts(story.mixes(g(60, everyTen().typedIn())), offScalp(Area.LENGTHS));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:20 LATE MEDIUM STYLIST",
                "10:20 LATE HIGH STYLIST");
        story.at("10:13");
        head.lastOn(on);
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:12 LATE MEDIUM STYLIST",
                "10:15 LATE HIGH STYLIST");
    }

    @Test
    void applyingAnotherPartOfTheSameHeadCountsToo() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        story.at("10:05");
        head.puts(story.mixes(g(60, leaflet("toner", Kind.DEPOSIT_COLOUR).typedIn())), offScalp(Area.ENDS));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:25 LATE MEDIUM STYLIST",
                "10:25 LATE HIGH STYLIST");
    }

    @ParameterizedTest
    @CsvSource({"10:02:59.999, 10:14:59.999", "10:03, 10:15", "10:03:00.001, 10:12"})
    void looksOfOnePersonWithinThreeMinutesAreOneRound(String second, String firstRings) {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        puts(story.arrivesFine(), second, everyTen(), offScalp(Area.LENGTHS));
        assertThat(mediumOfTheFirst()).isEqualTo(at(firstRings));
    }

    @Test
    void aRoundRingsTogetherWithItsLast() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        puts(story.arrivesFine(), "10:02", everyTen(), offScalp(Area.LENGTHS));
        var round = bells(story.floor(), STRAND_CHECK);
        assertThat(round).hasSize(2);
        assertStages(round.get(0), "10:10 DUE SILENT STYLIST", "10:14 LATE MEDIUM STYLIST", "10:17 LATE HIGH STYLIST");
        assertStages(round.get(1), "10:12 DUE SILENT STYLIST", "10:14 LATE MEDIUM STYLIST", "10:17 LATE HIGH STYLIST");
    }

    @Test
    void aRoundIsMeasuredFromItsFirst() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        puts(story.arrivesFine(), "10:02", everyTen(), offScalp(Area.LENGTHS));
        puts(story.arrivesFine(), "10:04", everyTen(), offScalp(Area.LENGTHS));
        assertThat(mediumOfTheFirst()).isEqualTo(at("10:14"));
    }

    @ParameterizedTest
    @CsvSource({"10:14:59.999, 10:12", "10:15, 10:12", "10:15:00.001, 10:15"})
    void unlessAHardLimitComesFirst(String limit, String rings) {
        var longest = Duration.between(at("10:00"), at(limit));
        puts(head, "10:00", everyTen().longestOn(longest), offScalp(Area.LENGTHS));
        puts(story.arrivesFine(), "10:03", everyTen(), offScalp(Area.LENGTHS));
        assertThat(mediumOfTheFirst()).isEqualTo(at(rings));
    }

    private java.time.Instant mediumOfTheFirst() {
        return bells(story.floor(), STRAND_CHECK).get(0).stages().get(1).from();
    }

    @Test
    void looksOfTwoPeopleAreTwoRounds() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        var other = story.arrivesFine();
        other.tells(new StayEvent.HandedOver(story.assistant(), null));
        puts(other, "10:02", everyTen(), offScalp(Area.LENGTHS));
        assertThat(mediumOfTheFirst()).isEqualTo(at("10:12"));
    }

    @Test
    void headsThatNobodyLooksAfterMakeNoRound() {
        head.tells(new StayEvent.HandedOver(null, null));
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        var other = story.arrivesFine();
        other.tells(new StayEvent.HandedOver(null, null));
        puts(other, "10:02", everyTen(), offScalp(Area.LENGTHS));
        assertThat(mediumOfTheFirst()).isEqualTo(at("10:12"));
    }

    @ParameterizedTest
    @CsvSource({"10:10:59.999, 1", "10:11, 1", "10:11:00.001, 3"})
    void aLookThatIsDueAMinuteBeforeTheRinseIsOnlyShown(String rinseBy, int stages) {
        var longest = Duration.between(at("10:00"), at(rinseBy));
        puts(head, "10:00", everyTen().longestOn(longest), offScalp(Area.LENGTHS));
        assertThat(bells(story.floor(), STRAND_CHECK).get(0).stages()).hasSize(stages);
    }

    @Test
    void whileBurningRingsALookIsOnlyShownAndOnceThatWasSeenItRingsAgain() {
        puts(head, "10:00", everyTen().longestOn(minutes(40)), offScalp(Area.LENGTHS));
        story.at("10:05");
        head.complains(Complaint.Grade.BURNING);
        assertRings(story.floor(), STRAND_CHECK, "10:10 DUE SILENT STYLIST");
        story.acknowledges(Ringing.bell(story.floor(), BellKind.BURNING));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:12 LATE MEDIUM STYLIST",
                "10:15 LATE HIGH STYLIST");
    }

    /** A house that set its numbers so that high comes before medium. */
    @ParameterizedTest
    @CsvSource({"1, 10:11", "2, 10:12"})
    void noLookGetsQuieterWhateverTheHouseSays(long highSooner, String rings) {
        story.policy(late(new Policy.LateCheck(minutes(2), minutes(5), minutes(highSooner), minutes(3))));
        puts(head, "10:00", everyTen(), onScalp(Area.REGROWTH));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                rings + " LATE MEDIUM STYLIST",
                rings + " LATE HIGH STYLIST");
    }

    private static Policy late(Policy.LateCheck checks) {
        var house = Policy.DEFAULT;
        return new Policy(
                house.applying(),
                house.working(),
                house.bowl(),
                checks,
                house.ringing(),
                house.skinTest(),
                house.longestOn(),
                house.weighingSlackGrams(),
                house.keeping());
    }

    @Test
    void severalPartsThatAreBeingAppliedKeepItQuietNoLongerThanTheFirstOfThem() {
        puts(head, "10:00", everyTen(), offScalp(Area.LENGTHS));
        story.at("10:03");
        head.puts(story.mixes(g(60, toner())), offScalp(Area.ENDS));
        story.at("10:18");
        var later = head.puts(story.mixes(g(60, toner())), offScalp(Area.HAIRLINE));
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:23 LATE MEDIUM STYLIST",
                "10:23 LATE HIGH STYLIST");
        head.lastOn(later);
        assertRings(
                story.floor(),
                STRAND_CHECK,
                "10:10 DUE SILENT STYLIST",
                "10:23 LATE MEDIUM STYLIST",
                "10:23 LATE HIGH STYLIST");
    }

    private static Directions toner() {
        return leaflet("toner", Kind.DEPOSIT_COLOUR).typedIn();
    }
}
