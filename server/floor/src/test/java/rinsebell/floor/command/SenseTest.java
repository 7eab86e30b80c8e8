package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.BASIN_CLOSED;
import static rinsebell.floor.ReasonCode.BELL_NOT_RINGING;
import static rinsebell.floor.ReasonCode.BOWL_EMPTY;
import static rinsebell.floor.ReasonCode.BOWL_GONE;
import static rinsebell.floor.ReasonCode.BOWL_IN_USE;
import static rinsebell.floor.ReasonCode.DAY_WOULD_TURN;
import static rinsebell.floor.ReasonCode.HEAT_NOT_ON;
import static rinsebell.floor.ReasonCode.NOT_KNOWN;
import static rinsebell.floor.ReasonCode.NOT_ON;
import static rinsebell.floor.ReasonCode.NO_SUCH_PLACE;
import static rinsebell.floor.ReasonCode.PLACE_TAKEN;
import static rinsebell.floor.ReasonCode.SALON_NOT_SET_UP;
import static rinsebell.floor.ReasonCode.VISIT_OVER;
import static rinsebell.floor.testing.Desk.isAccepted;
import static rinsebell.floor.testing.Desk.refusal;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Saturday.ZONE;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Floor;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** What contradicts what is known to have happened is refused whatever is answered. */
class SenseTest {
    private static final long NOBODY = 9_999;

    private final Story story = Story.stocked();
    private final Head head = story.at("09:40").arrivesFine();
    private final Head other = story.arrivesFine();
    private final Head gone = story.arrivesFine();
    private final BowlId bowl = story.at("09:45").mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
    private final BowlId thrown = story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
    private final ApplicationId on = story.at("09:50").puts(head, bowl, offScalp(Area.LENGTHS));
    private final ApplicationId off = story.puts(head, bowl, offScalp(Area.ENDS));

    private Desk desk() {
        story.at("09:55");
        head.rinses(off);
        gone.leaves();
        story.tells(new DayEvent.ThrownAway(thrown));
        story.tells(new DayEvent.BasinClosed(2));
        return Desk.after(story).at("10:00");
    }

    private record Row(String name, Function<SenseTest, Command> command, ReasonCode code) {
        @Override
        public String toString() {
            return name;
        }
    }

    private Command put(VisitId visit, BowlId which) {
        return Report.of(visit, new WorkEvent.PutOn(which, Area.LENGTHS, Zone.OFF_SCALP, Cover.OPEN, null));
    }

    private Command moves(Place place) {
        return Report.of(head.id(), new StayEvent.Moved(place));
    }

    private static Command welcome(Place place, @Nullable StaffId stylist) {
        return new Welcome(new StayEvent.Arrived(place, stylist, null, null), "AB", Gate.UNANSWERED);
    }

    static Stream<Row> impossible() {
        var nobody = new VisitId(NOBODY);
        var noBowl = new BowlId(NOBODY);
        var nothing = new ApplicationId(NOBODY);
        var noProduct = List.of(new Weighed(new ProductId(NOBODY), Grams.of(60)));
        return Stream.of(
                new Row("report of nobody", test -> Report.of(nobody, new StayEvent.Left()), NOT_KNOWN),
                new Row(
                        "already on nobody",
                        test -> new PutAlready(nobody, Area.ENDS, Zone.OFF_SCALP, Cover.OPEN),
                        NOT_KNOWN),
                new Row("put no bowl on", test -> test.put(test.head.id(), noBowl), NOT_KNOWN),
                new Row("put a thrown bowl on", test -> test.put(test.head.id(), test.thrown), BOWL_GONE),
                new Row("put on somebody who left", test -> test.put(test.gone.id(), test.bowl), VISIT_OVER),
                new Row("last on of nothing", test -> Report.of(test.head.id(), new WorkEvent.LastOn(nothing)), NOT_ON),
                new Row(
                        "last on of what is off",
                        test -> Report.of(test.head.id(), new WorkEvent.LastOn(test.off)),
                        NOT_ON),
                new Row(
                        "cover of somebody else's",
                        test -> Report.of(test.other.id(), new WorkEvent.CoverChanged(test.on, Cover.FOIL)),
                        NOT_ON),
                new Row(
                        "plan for what is off",
                        test -> Report.of(test.head.id(), new WorkEvent.Planned(test.off, minutes(30))),
                        NOT_ON),
                new Row(
                        "rinse what is off",
                        test -> Report.of(
                                test.head.id(), new WorkEvent.TakenOff(Set.of(test.on, test.off), Ending.How.RINSED)),
                        NOT_ON),
                new Row(
                        "heat off without heat",
                        test -> Report.of(test.head.id(), new WorkEvent.HeatOff()),
                        HEAT_NOT_ON),
                new Row("move to a taken chair", test -> test.moves(Place.chair(2)), PLACE_TAKEN),
                new Row("move to no chair", test -> test.moves(Place.chair(9)), NO_SUCH_PLACE),
                new Row("move to chair nought", test -> test.moves(Place.chair(0)), NO_SUCH_PLACE),
                new Row("move to no basin", test -> test.moves(Place.basin(3)), NO_SUCH_PLACE),
                new Row("move to a closed basin", test -> test.moves(Place.basin(2)), BASIN_CLOSED),
                new Row(
                        "hand over to nobody known",
                        test -> Report.of(test.head.id(), new StayEvent.HandedOver(new StaffId(NOBODY), null)),
                        NOT_KNOWN),
                new Row(
                        "hand over with no such helper",
                        test -> Report.of(test.head.id(), new StayEvent.HandedOver(null, new StaffId(NOBODY))),
                        NOT_KNOWN),
                new Row("welcome to a taken chair", test -> welcome(Place.chair(1), null), PLACE_TAKEN),
                new Row("welcome to no chair", test -> welcome(Place.chair(9), null), NO_SUCH_PLACE),
                new Row("welcome to a closed basin", test -> welcome(Place.basin(2), null), BASIN_CLOSED),
                new Row("welcome with nobody known", test -> welcome(Place.BENCH, new StaffId(NOBODY)), NOT_KNOWN),
                new Row("mix something unknown", test -> new Mix(noProduct, BowlReason.FIRST, null), NOT_KNOWN),
                new Row("mix for nobody known", test -> new Mix(List.of(), BowlReason.FIRST, nobody), NOT_KNOWN),
                new Row(
                        "fill no bowl",
                        test -> new FillRecipe(noBowl, test.story.weighed(g(60, Shelf.POWDER))),
                        NOT_KNOWN),
                new Row("fill with nothing", test -> new FillRecipe(test.bowl, List.of()), BOWL_EMPTY),
                new Row("divide no bowl", test -> new DivideBowl(noBowl, BowlReason.FIRST, null), NOT_KNOWN),
                new Row(
                        "divide a touched bowl",
                        test -> new DivideBowl(test.bowl, BowlReason.FIRST, null),
                        BOWL_IN_USE),
                new Row("divide a thrown bowl", test -> new DivideBowl(test.thrown, BowlReason.FIRST, null), BOWL_GONE),
                new Row("throw no bowl away", test -> new ThrowAway(noBowl), NOT_KNOWN),
                new Row("throw away twice", test -> new ThrowAway(test.thrown), BOWL_GONE),
                new Row(
                        "break of nobody known",
                        test -> new OnDay(new DayEvent.BreakBegan(new StaffId(NOBODY))),
                        NOT_KNOWN),
                new Row("close no basin", test -> new OnDay(new DayEvent.BasinClosed(3)), NO_SUCH_PLACE),
                new Row("withdraw no fact", test -> new WithdrawFact(NOBODY, Set.of()), NOT_KNOWN),
                new Row("set no fact back", test -> new SetFactBack(NOBODY, TEN), NOT_KNOWN),
                new Row(
                        "see no bell",
                        test -> new Acknowledge(new BellKey(BellKind.RINSE, NOBODY, NOBODY), null),
                        BELL_NOT_RINGING),
                new Row(
                        "revise no product",
                        test -> new Arrange(
                                new SalonEvent.DirectionsRevised(new ProductId(NOBODY), Shelf.POWDER), null),
                        NOT_KNOWN),
                new Row(
                        "offer no product",
                        test -> new Arrange(new SalonEvent.ProductOffered(new ProductId(NOBODY), false), null),
                        NOT_KNOWN),
                new Row(
                        "keep a recipe of nothing",
                        test -> new KeepRecipes(List.of(new KeepRecipes.Written(null, null, "mine", List.of()))),
                        BOWL_EMPTY),
                new Row(
                        "keep a recipe of what nobody knows",
                        test -> new KeepRecipes(List.of(new KeepRecipes.Written(null, null, "mine", noProduct))),
                        NOT_KNOWN),
                new Row(
                        "change no recipe",
                        test -> new KeepRecipes(List.of(new KeepRecipes.Written(
                                new RecipeId(NOBODY), null, "mine", test.story.weighed(g(60, Shelf.POWDER))))),
                        NOT_KNOWN),
                new Row(
                        "drop no recipe",
                        test -> new Arrange(new SalonEvent.RecipeDropped(new RecipeId(NOBODY), true), null),
                        NOT_KNOWN),
                new Row(
                        "change nobody",
                        test -> new Arrange(new SalonEvent.StaffChanged(new StaffId(NOBODY), Role.DESK, true), null),
                        NOT_KNOWN),
                // On a Saturday morning in Berlin it is still Friday in Pago Pago: IANA time zone database.
                new Row(
                        "make it yesterday for those who are here",
                        test -> new Arrange(
                                new SalonEvent.HouseSet(new House(8, 2, 4, ZoneId.of("Pacific/Pago_Pago"), true)),
                                null),
                        DAY_WOULD_TURN),
                new Row(
                        "take a chair out under somebody",
                        test -> new Arrange(new SalonEvent.HouseSet(new House(1, 2, 4, ZONE, true)), null),
                        PLACE_TAKEN));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("impossible")
    void noAnswerMakesItTrue(Row row) {
        var desk = desk();
        var command = row.command.apply(this);
        var before = desk.floor();
        for (var decision : List.of(desk.plans(command), desk.reports(command))) {
            assertThat(refusal(decision)).containsExactly(row.code);
            assertThat(((Decision.Refused) decision).canBeFact()).isFalse();
        }
        assertThat(desk.floor()).isSameAs(before);
    }

    @Test
    void aSalonThatIsNotSetUpWelcomesNobodyAndMixesNothing() {
        var desk = new Desk(Floor.EMPTY, TEN);
        assertThat(refusal(desk.plans(welcome(Place.BENCH, null)))).containsExactly(SALON_NOT_SET_UP);
        assertThat(refusal(desk.plans(new Mix(List.of(), BowlReason.FIRST, null))))
                .containsExactly(SALON_NOT_SET_UP);
        desk.plans(new Arrange(new SalonEvent.HouseSet(new House(2, 1, 1, ZONE, true)), "Salon"));
        assertThat(isAccepted(desk.plans(welcome(Place.chair(1), null)))).isTrue();
    }

    @Test
    void nobodyMoreComesThanCanBeKeptInView() {
        while (story.floor().openVisits().size() < Welcome.MOST_HERE) {
            story.arrives();
        }
        var desk = Desk.after(story).at("10:00");
        var decision = desk.plans(welcome(Place.BENCH, null));
        assertThat(refusal(decision)).containsExactly(ReasonCode.FLOOR_FULL);
        story.at("09:55");
        gone.leaves();
        assertThat(isAccepted(Desk.after(story).at("10:00").plans(welcome(Place.BENCH, null))))
                .isTrue();
    }

    @Test
    void theBenchTakesMoreThanOne() {
        var desk = desk();
        assertThat(isAccepted(desk.plans(moves(Place.BENCH)))).isTrue();
        assertThat(isAccepted(desk.plans(welcome(Place.BENCH, null)))).isTrue();
    }

    @Test
    void aChairIsFreeOnceItsClientMovedOrLeft() {
        var desk = desk();
        assertThat(isAccepted(desk.plans(moves(Place.chair(3)))))
                .as("somebody left it")
                .isTrue();
        assertThat(isAccepted(desk.plans(welcome(Place.chair(1), null))))
                .as("somebody moved from it")
                .isTrue();
        assertThat(isAccepted(desk.plans(moves(Place.chair(3)))))
                .as("to where one sits")
                .isTrue();
    }

    @Test
    void heatIsPutOffOnce() {
        var desk = desk();
        desk.reports(Report.of(other.id(), new WorkEvent.HeatOn(Heat.GENTLE_STEAM)));
        desk.at("10:10");
        assertThat(isAccepted(desk.plans(Report.of(other.id(), new WorkEvent.HeatOff()))))
                .isTrue();
        assertThat(refusal(desk.plans(Report.of(other.id(), new WorkEvent.HeatOff()))))
                .containsExactly(HEAT_NOT_ON);
        assertThat(isAccepted(desk.reports(
                        Report.of(other.id(), new WorkEvent.HeatOff()),
                        desk.now().minusSeconds(60))))
                .as("that it was off earlier may still be said")
                .isTrue();
    }

    // Somebody left at 09:55; what happened before that may still be written down.
    @ParameterizedTest
    @CsvSource({"09:54:59.999, true", "09:55, true", "09:55:00.001, false"})
    void whatHappenedBeforeSomebodyLeftMayStillBeWrittenDown(String clock, boolean accepted) {
        var desk = desk();
        var typed = rinsebell.floor.testing.Saturday.at(clock);
        var already = new PutAlready(gone.id(), Area.LENGTHS, Zone.OFF_SCALP, Cover.OPEN);
        assertThat(isAccepted(desk.reports(put(gone.id(), bowl), typed))).isEqualTo(accepted);
        assertThat(isAccepted(desk.reports(already, typed))).isEqualTo(accepted);
    }

    // The bowl was thrown away at 09:55.
    @ParameterizedTest
    @CsvSource({"09:54:59.999, true", "09:55, false", "09:55:00.001, false"})
    void aBowlMayHaveGoneOnBeforeItWasThrownAway(String clock, boolean accepted) {
        var desk = desk();
        var typed = rinsebell.floor.testing.Saturday.at(clock);
        assertThat(isAccepted(desk.reports(put(other.id(), thrown), typed))).isEqualTo(accepted);
    }

    // It was rinsed at 09:55; until then a look may have happened.
    @ParameterizedTest
    @CsvSource({"09:54:59.999, true", "09:55, true", "09:55:00.001, false"})
    void whatIsOffMayHaveBeenLookedAtBefore(String clock, boolean accepted) {
        var desk = desk();
        var typed = rinsebell.floor.testing.Saturday.at(clock);
        assertThat(isAccepted(desk.reports(Report.of(head.id(), new WorkEvent.LastOn(off)), typed)))
                .isEqualTo(accepted);
    }

    @Test
    void thePolicyOfAHouseIsItsOwn() {
        var desk = desk();
        assertThat(isAccepted(desk.plans(new Arrange(new SalonEvent.PolicySet(Policy.DEFAULT), null))))
                .isTrue();
    }
}
