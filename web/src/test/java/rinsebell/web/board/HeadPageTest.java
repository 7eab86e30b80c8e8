package rinsebell.web.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV10;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.PERMANENT;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.STRONG_CREAM;
import static rinsebell.floor.testing.Shelf.TONER;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.WorkEvent;
import rinsebell.web.Words;
import rinsebell.web.view.ChairPanel;
import rinsebell.web.view.Line;
import rinsebell.web.view.Press;
import rinsebell.web.view.Rule;
import rinsebell.web.view.Urgency;

/** What a head's page says about the head. Times are the story's own. */
class HeadPageTest {
    private final Story story = Story.stocked();

    private Moment moment(String clock) {
        var floor = story.floor();
        return new Moment(floor, id -> "L. " + id.seq(), floor.bells(), at(clock), Words.british());
    }

    private ChairPanel panel(Head head, String clock) {
        return new ChairBoard(moment(clock), head.visit()).panel();
    }

    /** Powder in foils, mixed at 10:00, on at 10:05: rinse by 10:55. */
    private ApplicationId foils(Head head) {
        var bowl = story.at("10:00").mixes(g(60, POWDER), g(60, DEV20));
        story.at("10:05");
        var on = head.puts(bowl, offScalp(Area.FOILS_ALL).under(Cover.FOIL));
        story.at("10:15");
        head.lastOn(on);
        return on;
    }

    private static Line line(ChairPanel panel, String label) {
        return panel.lines().stream()
                .filter(line -> line.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not among " + panel.lines()));
    }

    /** Why it must come off is said where it is said that it must, and each reason by itself. */
    @Test
    void dyeAfterAReactionSaysWhyItComesOff() {
        var head = story.at("09:55").arrivesFine();
        head.answers(Gates.reactedEarlier());
        head.answers(new Gate(null, null, null, null, Gate.YesNo.YES));
        var bowl = story.at("10:00").mixes(g(60, TONER), g(60, DEV10));
        story.at("10:05");
        head.lastOn(head.puts(bowl, onScalp(Area.LENGTHS)));
        var panel = panel(head, "10:06");
        assertThat(panel.due().what()).isEqualTo("Earlier reaction to hair dye: take it off");
        assertThat(panel.rules().all())
                .extracting(Rule::kind, Rule::text, Rule::why)
                .contains(
                        tuple(Rule.Kind.BROKEN, "Earlier reaction to hair dye: take it off", "since 10:05"),
                        tuple(Rule.Kind.BROKEN, "Under 16: take it off", "since 10:05"));
    }

    @Test
    void whatMustNotBeOnTheScalpSaysByWhatRule() {
        var head = story.at("09:55").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, POWDER), g(60, DEV20));
        story.at("10:05");
        head.puts(bowl, onScalp(Area.LENGTHS));
        assertThat(panel(head, "10:06").rules().all().get(0).why()).isEqualTo("since 10:05 · Off scalp only: powder.");
    }

    static Stream<Arguments> answers() {
        var date = Saturday.DATE;
        return Stream.of(
                Arguments.of(Gates.FINE, List.of()),
                Arguments.of(Gates.reactedEarlier(), List.of("Earlier reaction to hair dye")),
                Arguments.of(Gates.fineBut(new SkinTest(SkinTest.Result.REACTED, date)), List.of("Skin test reacted")),
                Arguments.of(Gates.under16(), List.of("Under 16")),
                Arguments.of(Gates.fineBut(SkinTest.NOT_DONE), List.of("No skin test for dye")),
                Arguments.of(Gates.fineBut(Gates.testedOn(date.minusDays(1))), List.of("Skin test does not count")),
                Arguments.of(Gates.fineBut(Gates.testedOn(date.minusDays(7))), List.of()),
                Arguments.of(Gates.fineBut(Gates.testedOn(date.minusDays(8))), List.of("Skin test does not count")),
                Arguments.of(Gates.fineBut(Gate.Scalp.SORE), List.of("Scalp is sore")),
                Arguments.of(Gates.fineBut(Gate.Scalp.BROKEN), List.of("Scalp is broken")),
                Arguments.of(Gates.fineBut(Gate.Metal.PRESENT), List.of("Henna or metal salts on the hair")),
                Arguments.of(Gates.fineBut(Gate.Metal.PRESENT_TEST_WITHOUT_REACTION), List.of()),
                Arguments.of(Gate.UNANSWERED, List.of("Questions not all answered")));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void anAnswerThatStandsInTheWayIsInPlainSight(Gate gate, List<String> said) {
        var head = story.at("09:55").arrives();
        head.answers(gate);
        assertThat(panel(head, "09:56").mind()).isEqualTo(said);
    }

    @Test
    void afterBurningTheScalpRestsUntilTheClientLeaves() {
        var head = story.at("09:55").arrivesFine();
        var on = foils(head);
        story.at("10:16");
        head.complains(Complaint.Grade.BURNING);
        story.at("10:18");
        head.rinses(on);
        assertThat(panel(head, "10:18").due().what()).isEqualTo("it is off: look at the scalp now");
        head.scalpIs(ScalpCheck.Finding.PINK);
        var panel = panel(head, "11:30");
        assertThat(panel.firstAid()).isEmpty();
        assertThat(panel.mind()).containsExactly("No chemical on this scalp again today");
        assertThat(panel.presses().get(0).label()).isEqualTo("Towel-dried");
    }

    @Test
    void aStrandThatSnapsIsUrgentAndLookingAgainStaysPossible() {
        var head = story.at("09:55").arrivesFine();
        var on = foils(head);
        head.tells(new LookEvent.StrandChecked(
                on,
                new StrandFinding(null, null, StrandFinding.Stretch.GIVES_WAY, null),
                CheckDecision.lookAgain(minutes(5))));
        var panel = panel(head, "10:16");
        assertThat(panel.lines().get(0))
                .isEqualTo(new Line("The strand snaps", "seen 10:15: off now", null, Urgency.HIGH));
        assertThat(panel.due().what()).isEqualTo("The strand snaps: off now");
        assertThat(panel.due().urgency()).isEqualTo(Urgency.HIGH);
        assertThat(new FloorBoard(moment("10:16")).chairs().get(0).due().what())
                .as("clients read the wall")
                .isEqualTo("strand check");
        assertThat(panel.presses()).extracting(Press::label).startsWith("Water is on", "Strand looks …");
    }

    @Test
    void aLookThatSaysNothingKeepsTheLastReadingInView() {
        var head = story.at("09:55").arrivesFine();
        var on = foils(head);
        head.tells(new LookEvent.StrandChecked(
                on, new StrandFinding(7, StrandFinding.Tone.ORANGE, null, null), CheckDecision.lookAgain(minutes(5))));
        assertThat(line(panel(head, "10:16"), "Last check 10:15").value())
                .isEqualTo("level 7, orange, look again in 5 min");
        story.at("10:20");
        head.looksAgain(on, minutes(3));
        assertThat(line(panel(head, "10:21"), "Last check 10:15").value())
                .isEqualTo("level 7, orange; looked again 10:20, look again in 3 min");
    }

    @Test
    void afterARinseItSaysWhatIsNextAndTheClientCanLeave() {
        var head = story.at("09:55").arrivesFine();
        var on = foils(head);
        story.at("10:40");
        head.rinses(on);
        var rinsed = panel(head, "10:41");
        assertThat(rinsed.due().what()).isEqualTo("rinsed 10:40. Next: towel-dry");
        assertThat(rinsed.presses()).extracting(Press::label).contains("Light enough?", "Leaves");
        head.tells(new WorkEvent.TowelDried());
        assertThat(panel(head, "10:42").due().what()).isEqualTo("rinsed 10:40. Next: is it light enough?");
    }

    @Test
    void nobodyAsksForLiftAfterAToner() {
        var head = story.at("09:55").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, TONER), g(60, DEV10));
        story.at("10:05");
        var on = head.puts(bowl, onScalp(Area.LENGTHS));
        story.at("10:20");
        head.rinses(on);
        assertThat(panel(head, "10:21").presses()).extracting(Press::label).doesNotContain("Light enough?");
    }

    /** Strong cream on the scalp at 10:05 with gentle steam from 10:10, which its directions allow for 15 min. */
    private Head underSteam() {
        var head = story.at("09:55").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, STRONG_CREAM), g(60, DEV20));
        story.at("10:05");
        head.lastOn(head.puts(bowl, onScalp(Area.WHOLE_HEAD)));
        story.at("10:10");
        head.heats(Heat.GENTLE_STEAM);
        return head;
    }

    @Test
    void heatCountsToItsEndAndIsFineNoLongerThanThat() {
        var head = underSteam();
        var before = panel(head, "10:24:59");
        assertThat(line(before, "Gentle steam until").counting()).hasValue(at("10:25"));
        assertThat(before.rules().all()).extracting(Rule::text).contains("Gentle steam is fine, up to 15 min");
        var after = panel(head, "10:25");
        assertThat(line(after, "Gentle steam is over: heat off").urgency()).isEqualTo(Urgency.MEDIUM);
        assertThat(after.rules().all())
                .extracting(Rule::text)
                .contains("Gentle steam was fine until 10:25: it is over now")
                .doesNotContain("Gentle steam is fine, up to 15 min");
    }

    @Test
    void anInstantThatHangsOnTheHeatSaysSo() {
        var head = story.at("09:55").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, PERMANENT), g(60, DEV20));
        story.at("10:05");
        head.lastOn(head.puts(bowl, onScalp(Area.REGROWTH)));
        assertThat(line(panel(head, "10:06"), "Rinse by").value()).isEqualTo("10:45 (developed)");
        story.at("10:07");
        head.heats(Heat.WARM_AIR);
        var panel = panel(head, "10:08");
        assertThat(line(panel, "Rinse by").value()).endsWith("(developed, if the warm air stays on)");
        assertThat(line(panel, "Ready from").value()).endsWith(", if the warm air stays on");
    }

    @Test
    void foilsComeOutBeforeTheRinse() {
        var head = story.at("09:55").arrivesFine();
        var on = foils(head);
        assertThat(panel(head, "10:16").due().aside()).isEqualTo("10:15 · foils out by 10:50 · rinse by 10:55");
        story.at("10:45");
        head.checks(on);
        var panel = panel(head, "10:46");
        assertThat(line(panel, "Foils out by").counting()).hasValue(at("10:50"));
        assertThat(panel.due().what()).isEqualTo("foils out by");
        assertThat(panel.due().aside()).isEqualTo("10:50 · rinse by 10:55");
        assertThat(panel.presses().get(0).sends()).isTrue();
        head.complains(Complaint.Grade.HOT_FOIL);
        assertThat(panel(head, "10:46").lines()).extracting(Line::label).doesNotContain("Foils out by");
    }

    /** Foils off the scalp, ready from 10:20 by 10:55, and colour on the regrowth, ready from 10:45 by 10:55 . */
    private Head twoProducts(String last) {
        var head = story.at("09:55").arrivesFine();
        foils(head);
        var bowl = story.at("10:16").mixes(g(60, PERMANENT), g(60, DEV20));
        story.at(last);
        head.lastOn(head.puts(bowl, onScalp(Area.REGROWTH)));
        return head;
    }

    @Test
    void twoProductsSayWhenTheyAreRinsedTogether() {
        var head = twoProducts("10:20");
        assertThat(line(panel(head, "10:21"), "Rinse together").value()).isEqualTo("10:50–10:55");
        head.complains(Complaint.Grade.BURNING);
        assertThat(panel(head, "10:21").lines()).extracting(Line::label).doesNotContain("Rinse together");
    }

    @Test
    void twoProductsSayThatTheyAreNotRinsedTogether() {
        assertThat(line(panel(twoProducts("10:26"), "10:27"), "Rinse together").value())
                .isEqualTo("no time suits all that is on");
    }

    @Test
    void whatKeepsOffTheScalpIsNamedWhereSomethingElseMayStayOnIt() {
        assertThat(panel(twoProducts("10:20"), "10:21").rules().all())
                .extracting(Rule::text)
                .contains("Keep it off the scalp: powder · foils, all round");
    }

    @Test
    void onlyWhatCountsFromTheLastOfItWaitsForThat() {
        var head = story.at("09:55").arrivesFine();
        var powder = story.at("10:00").mixes(g(60, POWDER), g(60, DEV20));
        story.at("10:05");
        head.puts(powder, offScalp(Area.LENGTHS));
        assertThat(panel(head, "10:06").lines()).extracting(Line::label).doesNotContain("Ready from");
        var other = story.at("10:07").arrivesFine();
        other.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.WHOLE_HEAD));
        assertThat(line(panel(other, "10:08"), "Ready from").value()).isEqualTo("known once the last of it is on");
    }

    @Test
    void whatComesFirstIsSaidBeforeAnythingGoesOn() {
        var head = story.at("09:55").arrivesFine();
        assertThat(panel(head, "09:56").rules().cautions())
                .contains(
                        "Skin test for dye two days before, each time.",
                        "Strand test before the first bowl.",
                        "Nothing on a broken or irritated scalp.",
                        "No heat and no closed cover unless the directions allow it.");
    }
}
