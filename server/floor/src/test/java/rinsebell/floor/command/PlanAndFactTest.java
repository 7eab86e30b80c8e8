package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Develops.Counted.FROM_LAST_ON;
import static rinsebell.floor.testing.Desk.cautions;
import static rinsebell.floor.testing.Desk.events;
import static rinsebell.floor.testing.Desk.isAccepted;
import static rinsebell.floor.testing.Desk.refusal;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Ringing;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.WorkEvent;

/** Facts are recorded, plans are refused: a restriction never stops the truth from being written down. */
class PlanAndFactTest {
    private final Story story = Story.stocked();
    private final Head head = story.at("09:50").arrivesFine();
    private final BowlId cream = story.at("09:55").mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
    private final BowlId powder = story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
    private final BowlId unknown = story.mixes();
    private final ApplicationId on = story.at("10:00").puts(head, cream, onScalp(Area.REGROWTH));
    private final Desk desk = Desk.after(story).at("10:05");

    /** A press that breaks a restriction, and which. */
    private record Row(String name, Function<PlanAndFactTest, Command> command, List<ReasonCode> codes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Row row(String name, Function<PlanAndFactTest, Command> command, ReasonCode... codes) {
        return new Row(name, command, List.of(codes));
    }

    private Command put(BowlId bowl, Area area, Zone zone, Cover cover) {
        return Report.of(head.id(), new WorkEvent.PutOn(bowl, area, zone, cover, null));
    }

    static Stream<Row> broken() {
        return Stream.of(
                row(
                        "mix powder with colour",
                        test -> new Mix(
                                test.story.weighed(g(60, Shelf.POWDER), g(7, Shelf.PERMANENT), g(67, Shelf.DEV30)),
                                BowlReason.FIRST,
                                null),
                        ReasonCode.NEVER_MIXED,
                        ReasonCode.CONTAINS_PEROXIDE),
                row(
                        "mix a double amount",
                        test -> new Mix(
                                test.story.weighed(g(60, Shelf.MILD_CREAM), g(120, Shelf.DEV20)),
                                BowlReason.FIRST,
                                null),
                        ReasonCode.TOO_MUCH_DEVELOPER,
                        ReasonCode.CONTAINS_PEROXIDE),
                row(
                        "powder on scalp",
                        test -> test.put(test.powder, Area.HAIRLINE, Zone.ON_SCALP, Cover.OPEN),
                        ReasonCode.OFF_SCALP_PRODUCT),
                row(
                        "powder under film",
                        test -> test.put(test.powder, Area.LENGTHS, Zone.OFF_SCALP, Cover.FILM),
                        ReasonCode.COVER_NOT_ALLOWED),
                row(
                        "an unknown recipe",
                        test -> test.put(test.unknown, Area.LENGTHS, Zone.OFF_SCALP, Cover.OPEN),
                        ReasonCode.RECIPE_UNKNOWN),
                row(
                        "dryer on cream",
                        test -> Report.of(test.head.id(), new WorkEvent.HeatOn(Heat.DRYER)),
                        ReasonCode.HEAT_NOT_ALLOWED),
                row(
                        "film over cream",
                        test -> Report.of(test.head.id(), new WorkEvent.CoverChanged(test.on, Cover.FILM)),
                        ReasonCode.COVER_NOT_ALLOWED),
                row(
                        "leaving with something on",
                        test -> Report.of(test.head.id(), new StayEvent.Left()),
                        ReasonCode.STILL_ON));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("broken")
    void asAPlanItIsRefusedAndAsAFactWrittenDown(Row row) {
        var command = row.command.apply(this);
        var before = desk.floor();
        var planned = desk.plans(command);
        assertThat(refusal(planned)).isEqualTo(row.codes);
        assertThat(((Decision.Refused) planned).canBeFact()).isTrue();
        assertThat(desk.floor()).as("nothing was written down").isSameAs(before);
        var reported = desk.reports(command);
        assertThat(isAccepted(reported)).isTrue();
        assertThat(desk.floor().lastSeq()).isGreaterThan(before.lastSeq());
    }

    /** Gate, heat, cover, zone, mixture: everything a put-on may break is said at once, the worst first. */
    @Test
    void everythingThatForbidsItIsSaidAtOnce() {
        desk.reports(Report.of(head.id(), new StayEvent.GateAnswered(Gates.fineBut(Gate.Scalp.SORE))));
        desk.reports(Report.of(head.id(), new WorkEvent.HeatOn(Heat.DRYER)));
        assertThat(refusal(desk.plans(put(powder, Area.HAIRLINE, Zone.ON_SCALP, Cover.CAP))))
                .containsExactly(
                        ReasonCode.SCALP_NOT_SOUND,
                        ReasonCode.OFF_SCALP_PRODUCT,
                        ReasonCode.HEAT_NOT_ALLOWED,
                        ReasonCode.COVER_NOT_ALLOWED);
    }

    /** Said before anything is weighed, rather than when the bowl stands there; what is still open is asked later. */
    @Test
    void aMixtureIsRefusedForWhomItHasHurt() {
        var colour = new Mix(story.weighed(g(40, Shelf.PERMANENT), g(40, Shelf.DEV20)), BowlReason.FIRST, head.id());
        assertThat(refusal(desk.plans(colour))).isEmpty();
        desk.reports(Report.of(head.id(), new StayEvent.GateAnswered(Gates.reactedEarlier())));
        assertThat(refusal(desk.plans(colour))).contains(ReasonCode.DYE_REACTION);
        assertThat(isAccepted(desk.reports(colour))).isTrue();
    }

    @Test
    void whatWasDoneAnywayRings() {
        desk.reports(put(powder, Area.HAIRLINE, Zone.ON_SCALP, Cover.OPEN));
        assertThat(Ringing.bell(desk.floor(), BellKind.FORBIDDEN_ZONE).at(desk.now()))
                .isPresent();
    }

    static Stream<Function<PlanAndFactTest, VisitEvent>> alwaysFacts() {
        return Stream.of(
                test -> new WorkEvent.LastOn(test.on),
                test -> new LookEvent.StrandChecked(test.on, StrandFinding.NOTHING_SAID, CheckDecision.RINSE),
                test -> new LookEvent.ScalpChecked(ScalpCheck.Finding.SORE, null),
                test -> new LookEvent.Complained(Complaint.Grade.BURNING),
                test -> new WorkEvent.TakenOff(java.util.Set.of(test.on), Ending.How.RINSED),
                test -> new WorkEvent.Emulsified(test.on),
                test -> new WorkEvent.FoilsOut(test.on),
                test -> new WorkEvent.TowelDried(),
                test -> new LookEvent.LiftJudged(false),
                test -> new LookEvent.RoundsStopped(),
                test -> new StayEvent.Relabelled(),
                test -> new StayEvent.GateAnswered(Gates.under16()));
    }

    /** The worst of gates, and still: looks, rinses and discomfort are written down at the first press. */
    @ParameterizedTest
    @MethodSource("alwaysFacts")
    void whatIsAlwaysAFactIsNeverRefused(Function<PlanAndFactTest, VisitEvent> event) {
        desk.reports(Report.of(head.id(), new StayEvent.GateAnswered(Gates.fineBut(Gate.Scalp.BROKEN))));
        desk.reports(Report.of(head.id(), new LookEvent.Complained(Complaint.Grade.HOT_FOIL)));
        assertThat(isAccepted(desk.plans(Report.of(head.id(), event.apply(this)))))
                .isTrue();
    }

    @Test
    void aCautionRefusesNothing() {
        var high = new Mix(story.weighed(g(60, Shelf.HIGH_LIFT), g(60, Shelf.DEV40)), BowlReason.FIRST, null);
        var decision = desk.plans(high);
        assertThat(cautions(decision)).containsExactly(ReasonCode.CONTAINS_AMMONIA, ReasonCode.CONTAINS_PEROXIDE);
    }

    // The cream on the head must be off by 10:55; mixed at 10:05 a colour that develops for so long is ready then, or
    // not.
    @ParameterizedTest
    @CsvSource({"49, false", "50, false", "51, true"})
    void thatThereIsNoCommonRinseIsSaidBeforeTheSecondBowlIsMixed(long develops, boolean none) {
        var slow = leaflet("slow", Kind.DEPOSIT_COLOUR)
                .develops(FROM_LAST_ON, minutes(develops), minutes(90))
                .typedIn();
        desk.plans(new Arrange(new SalonEvent.ProductEntered(slow), null));
        var weighed = List.of(new Weighed(new ProductId(desk.last()), Grams.of(60)));
        var decision = desk.plans(new Mix(weighed, BowlReason.NEXT_AREA, head.id()));
        assertThat(isAccepted(decision)).isTrue();
        assertThat(cautions(decision)).isEqualTo(none ? List.of(ReasonCode.NO_COMMON_RINSE) : List.of());
        assertThat(cautions(desk.plans(new Mix(weighed, BowlReason.NEXT_AREA, null))))
                .as("for nobody yet")
                .isEmpty();
    }

    /** On since 10:00 and off by 10:55; a colour of 51 minutes that is put on at 10:05 is ready a minute later. */
    @Test
    void whatCannotBeRinsedTogetherIsNamedWithItsTimes() {
        var slow = leaflet("slow", Kind.DEPOSIT_COLOUR)
                .develops(FROM_LAST_ON, minutes(51), minutes(90))
                .typedIn();
        desk.plans(new Arrange(new SalonEvent.ProductEntered(slow), null));
        var weighed = List.of(new Weighed(new ProductId(desk.last()), Grams.of(60)));
        var decision = desk.plans(new Mix(weighed, BowlReason.NEXT_AREA, head.id()));
        assertThat(((Decision.Accepted) decision).cautions().get(0).args())
                .containsExactly("mild cream", Saturday.TEN.plus(minutes(55)), "slow", Saturday.TEN.plus(minutes(56)));
    }

    @ParameterizedTest
    @CsvSource({"29, true", "30, false", "31, false"})
    void thatRinseByComesBeforeReadyIsSaidBeforeTheBowlIsMixed(long longestOn, boolean said) {
        var hasty = leaflet("hasty", Kind.DEPOSIT_COLOUR)
                .develops(FROM_LAST_ON, minutes(30), minutes(40))
                .longestOn(minutes(longestOn))
                .typedIn();
        desk.plans(new Arrange(new SalonEvent.ProductEntered(hasty), null));
        var weighed = List.of(new Weighed(new ProductId(desk.last()), Grams.of(60)));
        desk.reports(Report.of(head.id(), new WorkEvent.TakenOff(java.util.Set.of(on), Ending.How.RINSED)));
        var decision = desk.plans(new Mix(weighed, BowlReason.FIRST, head.id()));
        assertThat(cautions(decision)).isEqualTo(said ? List.of(ReasonCode.READY_AFTER_RINSE_BY) : List.of());
    }

    @Test
    void anUnknownBowlMayBeMixedAndFilledInLater() {
        desk.plans(new Mix(List.of(), BowlReason.FIRST, head.id()));
        var bowl = new BowlId(desk.last());
        assertThat(desk.floor().bowl(bowl).orElseThrow().isRecipeKnown()).isFalse();
        desk.at("10:06").plans(new FillRecipe(bowl, story.weighed(g(60, Shelf.POWDER), g(90, Shelf.DEV30))));
        assertThat(desk.floor().bowl(bowl).orElseThrow().isRecipeKnown())
                .as("a fact whatever the mixture")
                .isTrue();
    }

    @Test
    void whatIsAlreadyOnIsAFactMixedTenMinutesBefore() {
        var decision = desk.plans(new PutAlready(head.id(), Area.LENGTHS, Zone.OFF_SCALP, Cover.FOIL));
        assertThat(events(decision)).hasSize(2);
        var bowl = new BowlId(desk.last() - 1);
        assertThat(desk.floor().bowl(bowl).orElseThrow().mixedAt())
                .isEqualTo(desk.at("09:55").now());
        var application = desk.floor()
                .visit(head.id())
                .flatMap(visit -> visit.application(new ApplicationId(desk.last())))
                .orElseThrow();
        assertThat(application.bowl()).isEqualTo(bowl);
        assertThat(application.firstOn()).isEqualTo(desk.at("10:05").now());
    }

    @Test
    void severalEventsAreOneReportAllOrNone() {
        var before = desk.floor();
        var both = Report.of(
                head.id(), new WorkEvent.TakenOff(java.util.Set.of(on), Ending.How.RINSED), new WorkEvent.HeatOff());
        assertThat(refusal(desk.plans(both))).containsExactly(ReasonCode.HEAT_NOT_ON);
        assertThat(desk.floor()).isSameAs(before);
    }

    @ParameterizedTest
    @EnumSource(BowlReason.class)
    void aBowlKeepsWhatItWasMixedFor(BowlReason reason) {
        desk.plans(new Mix(story.weighed(g(60, Shelf.POWDER), g(60, Shelf.DEV30)), reason, head.id()));
        var bowl = desk.floor().bowl(new BowlId(desk.last())).orElseThrow();
        assertThat(bowl.reason()).isEqualTo(reason);
        assertThat(bowl.forVisit()).isEqualTo(head.id());
        assertThat(bowl.mixedAt()).isEqualTo(desk.now());
    }

    @Test
    void theSameFloorAndTheSameQuestionGiveTheSameAnswer() {
        var commands = new ArrayList<Command>();
        commands.add(put(powder, Area.HAIRLINE, Zone.ON_SCALP, Cover.OPEN));
        commands.add(new OnDay(new DayEvent.BasinClosed(1)));
        commands.add(new MissTime(Duration.ofMinutes(5), desk.now()));
        commands.add(Report.of(head.id(), new WorkEvent.LastOn(on)));
        for (var command : commands) {
            var asked = rinsebell.floor.Asked.at(desk.now());
            assertThat(command.decide(desk.floor(), asked)).isEqualTo(command.decide(desk.floor(), asked));
        }
    }

    @Test
    void offScalpTheSamePowderIsFine() {
        assertThat(isAccepted(desk.plans(put(powder, Area.LENGTHS, Zone.OFF_SCALP, Cover.FOIL))))
                .isTrue();
    }
}
