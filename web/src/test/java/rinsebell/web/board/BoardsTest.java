package rinsebell.web.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static rinsebell.floor.testing.Saturday.ZONE;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.Words;
import rinsebell.web.view.Axis;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.Bell;
import rinsebell.web.view.ChairRow;
import rinsebell.web.view.DeskBoard;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.HeadCard;
import rinsebell.web.view.Press;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Rule;
import rinsebell.web.view.Urgency;

/** What the boards tell of a floor that a story made. Times are the story's own. */
class BoardsTest {
    private final Story story = Story.stocked();

    private Moment moment(String clock) {
        return moment(at(clock));
    }

    private Moment moment(Instant now) {
        var floor = story.floor();
        return new Moment(floor, id -> "L. " + id.seq(), floor.bells(), now, Words.british());
    }

    /** Powder in foils, mixed at 10:00, on at 10:05: rinse by 10:55, which is 55 minutes from mixing. */
    private Head foils() {
        var head = story.at("09:55").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, POWDER), g(60, DEV20));
        story.at("10:05");
        var on = head.puts(bowl, offScalp(Area.FOILS_ALL).under(Cover.FOIL));
        story.at("10:15");
        head.lastOn(on);
        head.checks(on);
        return head;
    }

    private ChairRow row(String clock) {
        return new FloorBoard(moment(clock)).chairs().get(0);
    }

    @Test
    void aFreeChairOpensAWelcome() {
        var row = row("09:00");
        assertThat(row.free()).isTrue();
        assertThat(row.due().what()).isEqualTo("free");
        assertThat(row.href()).isEqualTo("/welcome?place=chair-1");
    }

    /** A wrong "left" that is taken back, after somebody else was seated there. */
    @Test
    void twoClientsOnOneChairAreBothShown() {
        var first = story.at("09:00").arrives();
        var left = first.leaves();
        var second = story.at("09:10").arrives();
        second.tells(new StayEvent.Moved(Place.chair(1)));
        story.withdraws(left);
        var rows = new FloorBoard(moment("09:20")).chairs();
        assertThat(rows).extracting(ChairRow::href).contains(href(first), href(second));
        assertThat(rows).extracting(ChairRow::id).doesNotHaveDuplicates();
        assertThat(rows.stream().filter(row -> row.tile().equals(ChairRow.Tile.chair(1))))
                .hasSize(2);
    }

    @Test
    void whoWaitsOnTheBenchWithSomethingOnIsShown() {
        var head = foils();
        var without = new FloorBoard(moment("10:20")).chairs().size();
        head.tells(new StayEvent.Moved(Place.BENCH));
        var rows = new FloorBoard(moment("10:20")).chairs();
        assertThat(rows).hasSize(without + 1);
        assertThat(rows.get(without).href()).isEqualTo(href(head));
        assertThat(rows.get(without).tile()).isEqualTo(ChairRow.Tile.bench("bench"));
        assertThat(rows.get(0).free()).isTrue();
    }

    /** Mixed for one head at the same minute: each has its name. */
    @Test
    void bowlsThatWaitForOneHeadStandApart() {
        var head = story.at("09:55").arrivesFine();
        story.tells(new DayEvent.Mixed(story.portions(g(60, POWDER), g(60, DEV20)), BowlReason.FIRST, head.id()));
        story.tells(new DayEvent.Mixed(story.portions(g(40, MILD_CREAM), g(40, DEV20)), BowlReason.FIRST, head.id()));
        var lanes = row("10:00").ribbon().lanes();
        assertThat(lanes)
                .hasSize(2)
                .allMatch(lane -> lane.of() == 2 && lane.notes().size() == 1);
        assertThat(lanes).extracting(lane -> lane.place()).containsExactly(0, 1);
    }

    private static String href(Head head) {
        return "/visits/" + head.id().value();
    }

    @Test
    void whatComesNextIsCountedWithItsClockTime() {
        foils();
        var due = row("10:20").due();
        assertThat(due.what()).isEqualTo("strand check");
        assertThat(due.instant()).hasValue(at("10:25"));
        assertThat(due.urgency()).isEqualTo(Urgency.CALM);
        assertThat(due.aside()).isEqualTo("10:25 · rinse by 10:55");
    }

    /** The house rings medium from 2 minutes late: {@code Policy.DEFAULT}. */
    @Test
    void aLookAsksWhenDueAndRingsWhenLate() {
        foils();
        assertThat(row("10:24:59").due().urgency()).isEqualTo(Urgency.CALM);
        assertThat(row("10:25").due().urgency()).isEqualTo(Urgency.ASKED);
        assertThat(row("10:26:59").due().urgency()).isEqualTo(Urgency.ASKED);
        assertThat(row("10:27").due().urgency()).isEqualTo(Urgency.MEDIUM);
        assertThat(row("10:30").due().urgency()).isEqualTo(Urgency.HIGH);
    }

    @Test
    void theRibbonGoesRedBeyondAHardRinseBy() {
        foils();
        var lane = row("10:20").ribbon().lanes().get(0);
        assertThat(lane.bars(BarKind.MIXED))
                .singleElement()
                .satisfies(bar -> assertThat(bar.seconds()).isEqualTo(300));
        assertThat(lane.bars(BarKind.ON))
                .singleElement()
                .satisfies(bar -> assertThat(bar.seconds()).isEqualTo(50 * 60));
        assertThat(lane.bars(BarKind.OVER)).hasSize(1);
        assertThat(lane.bars(BarKind.OVER_SOFT)).isEmpty();
    }

    /** The wall hangs where clients see it. */
    @Test
    void theWallNeverSaysWhatAlarms() {
        var head = foils();
        story.at("10:20");
        head.heats(Heat.DRYER);
        head.complains(Complaint.Grade.BURNING);
        assertThat(seenAndHeard(new FloorBoard(moment("11:30")).fragments()))
                .contains("please come now")
                .doesNotContain("burning", "late", "reaction", "swelling", "hot foil", "directions");
        assertThat(new ChairBoard(moment("11:30"), head.visit()).panel().due().what())
                .isEqualTo("burning: off at once");
    }

    /** What people see, and what a screen reader says; not what only programs read. */
    private String seenAndHeard(List<Fragment> fragments) {
        var moment = moment("11:30");
        var screen = new Screen(moment.words(), Assets.under("/assets"), moment.time(), moment.now(), "run-1", null);
        var html = fragments.stream()
                .map(fragment -> new Pages().render(fragment, screen))
                .collect(Collectors.joining());
        return html.replaceAll("<[^>]*aria-label=\"([^\"]*)\"[^>]*>", "$1")
                .replaceAll("<[^>]*>", " ")
                .toLowerCase(Locale.ROOT);
    }

    @Test
    void burningSaysWhatToDoFirstAndPutsTheRinseFirst() {
        var head = foils();
        story.at("10:20");
        head.complains(Complaint.Grade.BURNING);
        var panel = new ChairBoard(moment("10:20"), head.visit()).panel();
        assertThat(panel.firstAid())
                .hasValueSatisfying(aid -> assertThat(aid.call()).contains("emergency services"));
        assertThat(panel.presses().get(0).to()).endsWith("/rinse");
    }

    /** Seen is not done: what hurts most stays on top. */
    @Test
    void theLoudestBellComesFirst() {
        var head = foils();
        story.at("10:20");
        head.complains(Complaint.Grade.TINGLING);
        assertThat(new BellBoard(moment("10:30")).list().bells())
                .extracting(Bell::what, Bell::urgency)
                .containsExactly(
                        tuple("strand check", Urgency.HIGH), tuple("tingling: look at the scalp", Urgency.MEDIUM));
    }

    @Test
    void theChairListsWhatIsForbiddenAndWhatIsFine() {
        var head = foils();
        var rules =
                new ChairBoard(moment("10:20"), head.visit()).panel().rules().all();
        assertThat(rules.stream().map(Rule::text))
                .containsExactly(
                        "Keep it off the scalp",
                        "No heat of any kind",
                        "No film or cap over it",
                        "Foil over it is fine");
    }

    /** The cream may touch a scalp by its directions; after it was rinsed off this one, the next round may not. */
    @Test
    void anotherRoundIsToldToKeepOffTheScalp() {
        var head = story.at("09:00").arrivesFine();
        var first = story.mixes(g(60, MILD_CREAM), g(60, DEV20));
        story.at("09:02");
        var on = head.puts(first, onScalp(Area.WHOLE_HEAD));
        assertThat(firstRule(head, "09:03")).doesNotContain("scalp");
        story.at("09:40");
        head.rinses(on);
        var next = story.at("09:50").mixes(g(60, MILD_CREAM), g(60, DEV20));
        story.at("09:52");
        head.puts(next, offScalp(Area.LENGTHS));
        assertThat(firstRule(head, "09:53")).isEqualTo("Keep it off the scalp");
    }

    private String firstRule(Head head, String clock) {
        return new ChairBoard(moment(clock), head.visit())
                .panel()
                .rules()
                .all()
                .get(0)
                .text();
    }

    @Test
    void whatIsBrokenComesFirst() {
        var head = foils();
        story.at("10:20");
        head.heats(Heat.DRYER);
        var rules =
                new ChairBoard(moment("10:21"), head.visit()).panel().rules().all();
        assertThat(rules.get(0).kind()).isEqualTo(Rule.Kind.BROKEN);
        assertThat(rules.get(0).why()).isEqualTo("since 10:20");
    }

    @Test
    void theBasinIsToldWhenToStartAndWhatNotToDo() {
        var head = foils();
        story.at("10:20");
        head.scalpIs(ScalpCheck.Finding.PINK);
        var card = new BasinBoard(moment("10:21")).next().cards().get(0);
        assertThat(card.due().what()).isEqualTo("to basin A at 10:55");
        assertThat(card.due().instant()).hasValue(at("10:55"));
        assertThat(card.forbidden())
                .containsExactly("keep it off the scalp", "foils out first", "scalp is pink: go gently, tell L. 2");
    }

    /** Who sits at basin A with a toner on is not sent away for the next head. */
    @Test
    void theBasinThatIsFreeFirstIsKept() {
        var toned = foils();
        story.at("10:18");
        toned.tells(new StayEvent.Moved(Place.basin(1)));
        var next = story.at("10:19").arrivesFine();
        var bowl = story.mixes(g(60, POWDER), g(60, DEV20));
        next.puts(bowl, offScalp(Area.LENGTHS));
        var cards = new BasinBoard(moment("10:20")).next().cards();
        assertThat(cards).extracting(card -> card.due().what()).containsExactly("rinse by", "to basin B at 11:09");
        assertThat(cards.get(1).presses().get(0).fields()).containsExactly(new Press.Hidden("basin", "B"));
    }

    /** A rinse that has been due for longer waits for whoever burns. */
    @Test
    void whoBurnsIsRinsedFirst() {
        foils();
        var burns = story.at("10:30").arrivesFine();
        burns.tells(new StayEvent.Moved(Place.chair(2)));
        burns.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        story.at("10:56");
        burns.complains(Complaint.Grade.BURNING);
        var cards = new BasinBoard(moment("10:57")).next().cards();
        assertThat(cards.get(0).due().what()).startsWith("burning");
        assertThat(cards.get(1).due().urgency()).isEqualTo(Urgency.HIGH);
    }

    /** What can't be in time any more is drawn all the same, and no bar ends before it begins. */
    @Test
    void aTurnThatIsTooLateIsDrawn() {
        foils();
        for (var clock : List.of("10:21", "10:54", "10:56", "11:30")) {
            assertThat(new FloorBoard(moment(clock)).basins())
                    .flatExtracting(row -> row.ribbon().lanes())
                    .flatExtracting(lane -> Stream.of(Ribbon.BarKind.values())
                            .flatMap(kind -> lane.bars(kind).stream())
                            .toList())
                    .allSatisfy(bar -> assertThat(bar.seconds()).as(clock).isPositive());
        }
        assertThat(new FloorBoard(moment("11:30"))
                        .basins()
                        .get(0)
                        .ribbon()
                        .lanes()
                        .get(0)
                        .bars(Ribbon.BarKind.TOO_LATE))
                .hasSize(1);
    }

    /** Looks are the stylist's; the basin is told of rinses alone. */
    @Test
    void aLateLookDoesNotRingAtTheBasin() {
        foils();
        assertThat(new BasinBoard(moment("10:31")).next().cards().get(0).due().what())
                .isEqualTo("to basin A at 10:55");
        assertThat(new BasinBoard(moment("10:55")).next().cards().get(0).due().what())
                .isEqualTo("rinse now · basin A");
    }

    @Test
    void waterIsOnInOnePress() {
        var head = foils();
        var rinse =
                new ChairBoard(moment("10:55"), head.visit()).panel().presses().get(0);
        assertThat(rinse.sends()).isTrue();
        assertThat(rinse.to()).endsWith("/rinse");
        assertThat(rinse.hint()).isEqualTo("all of it, now, at basin A");
    }

    /** Questions, a bowl, the brush: what comes first is offered first. */
    @Test
    void nothingIsPutOnBeforeTheQuestionsAndABowl() {
        var head = story.at("10:00").arrives();
        assertThat(pressed(head)).endsWith("/gate");
        head = story.at("10:01").arrivesFine();
        assertThat(pressed(head)).startsWith("/mixtures?visit=");
    }

    private String pressed(Head head) {
        return new ChairBoard(moment("10:02"), head.visit())
                .panel()
                .presses()
                .get(0)
                .to();
    }

    /** At 10:55 the rinse is due and the look at a strand is half an hour late: both are loud. */
    @Test
    void whatHasToComeOffGoesBeforeWhatHasToBeLookedAt() {
        foils();
        assertThat(new BellBoard(moment("10:55")).list().bells())
                .extracting(Bell::what, Bell::urgency)
                .startsWith(tuple("rinse now", Urgency.HIGH));
    }

    /** Seen is not done: whoever has heard it, it is still on the hair. */
    @Test
    void whatHasToComeOffStaysFirstWhenItWasHeard() {
        foils();
        var rinse = moment("10:55").bells().stream()
                .filter(bell -> bell.kind() == BellKind.RINSE)
                .findFirst()
                .orElseThrow();
        story.at("10:55:30");
        story.acknowledges(rinse);
        var first = new BellBoard(moment("10:55:50")).strip().bells().get(0);
        assertThat(first.what()).isEqualTo("rinse now");
        assertThat(first.heard()).isTrue();
    }

    /** Of two that are as loud: the rinse that is due now, not the look that has been late for longer. */
    @Test
    void mineBeginWithWhatHasToComeOff() {
        var looked = story.at("10:20").arrivesFine();
        looked.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), offScalp(Area.WHOLE_HEAD));
        foils();
        var cards = new PocketBoard(moment("10:55"), null).mine().cards();
        assertThat(cards).extracting(card -> card.due().urgency()).containsExactly(Urgency.HIGH, Urgency.HIGH);
        assertThat(cards).extracting(card -> card.due().what()).first().isEqualTo("rinse now");
    }

    @Test
    void aClientAtTheBasinKeepsTheChair() {
        var head = foils();
        story.at("10:50");
        head.tells(new StayEvent.Moved(Place.basin(2)));
        assertThat(row("10:51").staff()).isEqualTo("L. 2 · at basin B");
        assertThat(new FloorBoard(moment("10:51")).basins().get(1))
                .extracting(BasinRow::state)
                .asString()
                .endsWith("is here");
    }

    @Test
    void theDeskRoundsUpToFiveMinutes() {
        foils();
        var desk = new DeskBoardTelling(moment("10:16")).board();
        assertThat(desk.rows().get(0).likely()).isEqualTo("11:05");
        assertThat(desk.rows().get(0).latest()).isEqualTo("11:10");
        assertThat(desk.walkIns().get(0)).isEqualTo("Chairs 2, 3, 4, 5, 6, 7 and 8 are free now.");
    }

    /** On since 10:05 and likely free at 11:05, almost surely by 11:10: what is told is kept in one press. */
    @Test
    void theDeskWarnsBeforeItTakesLongerThanTold() {
        var head = foils();
        var desk = new DeskBoardTelling(moment("10:16")).board();
        assertThat(desk.rows().get(0).tell()).isEqualTo("Your chair is free at about 11:05, almost surely by 11:10.");
        assertThat(desk.rows().get(0).told())
                .extracting(Press::to, Press::fields)
                .containsExactly(tuple(href(head) + "/end-told", List.of(new Press.Hidden("until", "11:10"))));
        assertThat(overruns(head, "10:16", "11:10")).isEmpty();
        assertThat(overruns(head, "10:16", "11:05"))
                .containsExactly("chair 1: L. 15 was told 11:05 and may take longer: done 11:05 to 11:10.");
        assertThat(overruns(head, "10:16", "11:00"))
                .containsExactly("chair 1: L. 15 was told 11:00 and is likely done 11:05 to 11:10. Tell them now.");
    }

    private List<String> overruns(Head head, String now, String told) {
        story.at(now);
        head.tells(new StayEvent.EndTold(Duration.between(at(now), at(told))));
        return new DeskBoardTelling(moment(now)).board().overruns();
    }

    /** Whoever waits for a chair hears of it as well. */
    @Test
    void whoWaitsForTheChairIsNamedWithTheOverrun() {
        story.tells(rinsebell.floor.Stream.SALON, new SalonEvent.HouseSet(new House(1, 2, 4, ZONE, true)));
        var head = foils();
        var next = story.at("10:16").arrives();
        next.tells(new StayEvent.Moved(Place.BENCH));
        next.tells(new StayEvent.ServicesListed(List.of(Service.CUT)));
        assertThat(overruns(head, "10:16", "10:50")).first().asString().endsWith("waits for that chair.");
        var desk = new DeskBoardTelling(moment("10:16")).board();
        var row = desk.rows().get(0);
        assertThat(desk.waiting().get(0).tell())
                .startsWith("Chair 1 is yours at about " + row.likely() + " to " + row.latest() + "; you are done ");
    }

    /** From the last whole ten minutes for three hours; drawn where the table says it. */
    @Test
    void theNextThreeHoursAreDrawnOnOneAxis() {
        var head = foils();
        story.at("10:16");
        head.tells(new StayEvent.EndTold(Duration.ofMinutes(44)));
        var moment = moment("10:16");
        var hours = new DeskBoardTelling(moment).board().hours();
        assertThat(hours.axis().ribbon().reach())
                .hasValue(new Ribbon.Reach(moment.second(at("10:10")), moment.second(at("13:20"))));
        assertThat(hours.axis().ticks())
                .extracting(Axis.Tick::clock)
                .startsWith("10:30", "11:00")
                .endsWith("13:00");
        assertThat(hours.tracks()).extracting(DeskBoard.Track::name).contains("chair 1", "chair 8", "basin A");
        var lane = hours.tracks().get(0).ribbon().lanes().get(0);
        assertThat(lane.bars())
                .extracting(Ribbon.Bar::kind, Ribbon.Bar::from, Ribbon.Bar::until)
                .containsExactlyInAnyOrder(
                        tuple(BarKind.TAKEN, moment.second(at("10:10")), moment.second(at("11:05"))),
                        tuple(BarKind.MAYBE, moment.second(at("11:05")), moment.second(at("11:10"))));
        assertThat(lane.marks()).extracting(Ribbon.Mark::at).containsExactly(moment.second(at("11:00")));
    }

    @Test
    void mineAreTheOnesIWorkOnTheLoudestFirst() {
        foils();
        var other = story.at("10:00").arrivesFine();
        var bowl = story.mixes(g(60, MILD_CREAM), g(60, DEV20));
        story.at("10:05");
        other.lastOn(other.puts(bowl, onScalp(Area.WHOLE_HEAD)));
        var cards = new PocketBoard(moment("10:28"), story.stylist()).mine().cards();
        assertThat(cards).extracting(HeadCard::place).containsExactly("2", "1");
        assertThat(new PocketBoard(moment("10:28"), new StaffId(99)).mine().cards())
                .isEmpty();
    }

    /** Every board draws, and draws the same while nothing happens: the feed then sends nothing. */
    @Test
    void aBoardIsEqualUntilSomethingChanges() {
        var head = foils();
        for (var name : List.of(
                Boards.FLOOR,
                Boards.BASINS,
                Boards.DESK,
                Boards.POCKET,
                Boards.BELLS,
                Boards.ALL_BELLS,
                Boards.DEVICE,
                Boards.visit(head.id()))) {
            var before = Boards.fragments(name, moment("10:20:00")).orElseThrow();
            assertThat(Boards.fragments(name, moment("10:20:59"))).as(name).hasValue(before);
            assertThat(Boards.isKnown(name, story.floor())).as(name).isTrue();
            assertThat(before.stream().map(Fragment::id)).as(name).doesNotHaveDuplicates();
        }
        for (var name : List.of("cellar", "visit-999", "pocket-999", "visit-", "floor ", "")) {
            assertThat(Boards.fragments(name, moment("10:20"))).as(name).isEmpty();
            assertThat(Boards.isKnown(name, story.floor())).as(name).isFalse();
        }
    }
}
