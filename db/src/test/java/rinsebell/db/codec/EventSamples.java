package rinsebell.db.codec;

import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Correction;
import rinsebell.floor.Event;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Tub;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Shift;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/**
 * Every kind of event, with all that it can say and with all left out. The kept corpus has a line for each, in this
 * order: new ones go to the end of their list and of the corpus.
 */
public final class EventSamples {

    private static final Instant TEN = Instant.parse("2026-11-28T10:00:00.001Z");
    private static final ApplicationId APPLICATION = new ApplicationId(21);
    private static final BowlId BOWL = new BowlId(17);
    private static final List<Portion> RECIPE = List.of(
            new Portion(new ProductId(5), 2, Grams.of("60")), new Portion(new ProductId(6), 1, Grams.of("59.95")));

    private static final List<Event> SALON = List.of(
            new SalonEvent.HouseSet(new House(8, 2, 4, ZoneId.of("Europe/Berlin"), true)),
            new SalonEvent.StaffEntered(Role.STYLIST),
            new SalonEvent.StaffChanged(new StaffId(3), Role.DESK, false),
            new SalonEvent.ProductEntered(DirectionsSamples.FULL),
            new SalonEvent.ProductEntered(DirectionsSamples.BARE),
            new SalonEvent.DirectionsRevised(new ProductId(5), DirectionsSamples.FULL),
            new SalonEvent.ProductOffered(new ProductId(5), true),
            new SalonEvent.RecipeKept(null, RECIPE),
            new SalonEvent.RecipeKept(new ClientId(9), RECIPE),
            new SalonEvent.RecipeRevised(new RecipeId(31), RECIPE),
            new SalonEvent.RecipeDropped(new RecipeId(31), true),
            new SalonEvent.PolicySet(new Policy(
                    ofMinutes(21),
                    new Policy.WorkingTime(ofSeconds(61), ofMinutes(4), ofMinutes(8), ofMinutes(5)),
                    new Policy.WaitingBowl(ofMinutes(6), ofMinutes(15)),
                    new Policy.LateCheck(ofMinutes(2), ofMinutes(7), ofMinutes(9), ofMinutes(3)),
                    Policy.Ringing.DEFAULT,
                    new Policy.SkinTestRule(Duration.ofHours(48), 30),
                    Map.of(Kind.POWDER_LIGHTENER, ofMinutes(44), Kind.HIGH_LIFT_COLOUR, ofMinutes(55)),
                    1,
                    Policy.Keeping.DEFAULT)),
            new SalonEvent.PolicySet(new Policy(
                    ofMinutes(21),
                    new Policy.WorkingTime(ofSeconds(61), ofMinutes(4), ofMinutes(8), ofMinutes(5)),
                    new Policy.WaitingBowl(ofMinutes(6), ofMinutes(15)),
                    new Policy.LateCheck(ofMinutes(2), ofMinutes(7), ofMinutes(9), ofMinutes(3)),
                    new Policy.Ringing(
                            ofSeconds(31), ofMinutes(3), ofMinutes(1), ofMinutes(4), ofMinutes(9), ofMinutes(6)),
                    new Policy.SkinTestRule(Duration.ofHours(48), 30),
                    Map.of(),
                    1,
                    Policy.Keeping.DEFAULT)),
            new SalonEvent.PolicySet(new Policy(
                    ofMinutes(21),
                    new Policy.WorkingTime(ofSeconds(61), ofMinutes(4), ofMinutes(8), ofMinutes(5)),
                    new Policy.WaitingBowl(ofMinutes(6), ofMinutes(15)),
                    new Policy.LateCheck(ofMinutes(2), ofMinutes(7), ofMinutes(9), ofMinutes(3)),
                    Policy.Ringing.DEFAULT,
                    new Policy.SkinTestRule(Duration.ofHours(48), 30),
                    Map.of(),
                    1,
                    new Policy.Keeping(36, 31, 20))),
            new SalonEvent.TubPriced(new ProductId(5), new Tub(Grams.of("450"), new BigDecimal("27.5"))),
            new SalonEvent.ShiftsSet(
                    new StaffId(3),
                    List.of(
                            new Shift(DayOfWeek.SATURDAY, LocalTime.of(9, 0), LocalTime.of(13, 0)),
                            new Shift(DayOfWeek.SATURDAY, LocalTime.of(13, 30), LocalTime.of(18, 0)))),
            new SalonEvent.ShiftsSet(new StaffId(4), List.of()),
            new SalonEvent.ServiceTimesSet(Map.of(Service.CUT, ofMinutes(35), Service.BLOW_DRY, ofMinutes(20))),
            new SalonEvent.TimesLearned(Map.of(Stretch.RINSING, List.of(540, 431), Stretch.DEVELOPING, List.of(812))));

    private static final List<Event> DAY = List.of(
            new DayEvent.Mixed(RECIPE, BowlReason.ANOTHER_ROUND, new VisitId(11)),
            new DayEvent.Mixed(List.of(), BowlReason.FIRST, null),
            new DayEvent.RecipeFilled(BOWL, RECIPE),
            new DayEvent.Divided(BOWL, BowlReason.TONE, new VisitId(12)),
            new DayEvent.Divided(BOWL, BowlReason.NEXT_AREA, null),
            new DayEvent.ThrownAway(BOWL),
            new DayEvent.BreakBegan(new StaffId(3)),
            new DayEvent.BreakEnded(new StaffId(4)),
            new DayEvent.BasinClosed(1),
            new DayEvent.BasinOpened(2),
            new DayEvent.Outage(TEN, TEN.plusSeconds(600)),
            new DayEvent.CaughtUp(),
            new DayEvent.ClockShifted(Duration.ofMillis(-3_600_001)),
            new DayEvent.TimeMissed(Duration.ofMinutes(23)),
            new DayEvent.DayEnded(),
            new DayEvent.ThrownAway(BOWL, new Left.Estimated(Left.Quarters.NOTHING)),
            new DayEvent.ThrownAway(BOWL, new Left.Weighed(Grams.of("12.5"))),
            new DayEvent.LeftTold(BOWL, new Left.Estimated(Left.Quarters.THREE_QUARTERS)),
            new DayEvent.TurnPinned(new VisitId(11), 2, new VisitId(12)),
            new DayEvent.TurnPinned(new VisitId(11), null, new VisitId(12)),
            new DayEvent.TurnPinned(new VisitId(11), 1, null),
            new DayEvent.TurnUnpinned(new VisitId(11)),
            new DayEvent.TurnsAnnounced(
                    40, Map.of(21L, new Announced(1, TEN), 25L, new Announced(2, TEN.plusSeconds(480)))));

    private static final List<Event> STAY = List.of(
            new StayEvent.Arrived(Place.chair(3), new StaffId(3), new StaffId(4), new ClientId(9)),
            new StayEvent.Arrived(Place.BENCH, null, null, null),
            new StayEvent.Relabelled(),
            new StayEvent.ClientLinked(new ClientId(9)),
            new StayEvent.ClientLinked(null),
            new StayEvent.GateAnswered(new Gate(
                    new Gate.SkinTest(Gate.SkinTest.Result.NO_REACTION, LocalDate.of(2026, 11, 26)),
                    Gate.Scalp.SORE,
                    Gate.YesNo.NO,
                    Gate.Metal.PRESENT_TEST_WITHOUT_REACTION,
                    Gate.YesNo.YES)),
            new StayEvent.GateAnswered(Gate.UNANSWERED),
            new StayEvent.GateAnswered(new Gate(Gate.SkinTest.NOT_DONE, null, null, null, null)),
            new StayEvent.Moved(Place.basin(2)),
            new StayEvent.HandedOver(new StaffId(5), new StaffId(6)),
            new StayEvent.HandedOver(null, null),
            new StayEvent.Left(),
            new StayEvent.ServicesListed(List.of(Service.BOWL, Service.TONER, Service.CUT, Service.BLOW_DRY)),
            new StayEvent.ServicesListed(List.of()),
            new StayEvent.ServiceBegan(Service.CUT),
            new StayEvent.ServiceEnded(Service.CUT),
            new StayEvent.EndTold(ofMinutes(95)));

    private static final List<Event> WORK = List.of(
            new WorkEvent.PutOn(BOWL, Area.FOILS_LEFT, Zone.OFF_SCALP, Cover.FOIL, ofMinutes(35)),
            new WorkEvent.PutOn(BOWL, Area.REGROWTH, Zone.ON_SCALP, Cover.OPEN, null),
            new WorkEvent.LastOn(APPLICATION),
            new WorkEvent.CoverChanged(APPLICATION, Cover.CAP),
            new WorkEvent.Planned(APPLICATION, ofMinutes(40)),
            new WorkEvent.Planned(APPLICATION, null),
            new WorkEvent.HeatOn(Heat.GENTLE_STEAM),
            new WorkEvent.HeatOff(),
            new WorkEvent.FoilsOut(APPLICATION),
            new WorkEvent.Emulsified(APPLICATION),
            new WorkEvent.TakenOff(Set.of(APPLICATION, new ApplicationId(25)), Ending.How.RINSED),
            new WorkEvent.TowelDried());

    private static final List<Event> LOOKS = List.of(
            new LookEvent.StrandChecked(
                    APPLICATION,
                    new StrandFinding(
                            7,
                            StrandFinding.Tone.ORANGE,
                            StrandFinding.Stretch.GIVES_WAY,
                            StrandFinding.Dryness.DRYING),
                    CheckDecision.lookAgain(ofMinutes(5))),
            new LookEvent.StrandChecked(APPLICATION, StrandFinding.NOTHING_SAID, null),
            new LookEvent.ScalpChecked(ScalpCheck.Finding.PINK, CheckDecision.RINSE),
            new LookEvent.ScalpChecked(ScalpCheck.Finding.FINE, null),
            new LookEvent.Complained(Complaint.Grade.HOT_FOIL),
            new LookEvent.LiftJudged(true),
            new LookEvent.RoundsStopped());

    private static final List<Event> NOTES = List.of(
            new Correction.Withdrawn(19),
            new Correction.SetBack(19, TEN),
            new BellAcknowledged(
                    new BellKey(BellKind.RINSE, 21, 22), Stage.Step.START, Priority.MEDIUM, Set.of(), false),
            new BellAcknowledged(
                    new BellKey(BellKind.PASSED_GATE, 22, 22),
                    Stage.Step.DUE,
                    Priority.HIGH,
                    Set.of(ReasonCode.SCALP_NOT_SOUND, ReasonCode.METAL_ON_HAIR),
                    false),
            new BellAcknowledged(
                    new BellKey(BellKind.PASSED_GATE, 22, 22), Stage.Step.DUE, Priority.HIGH, Set.of(), true),
            new BellShelved(new BellKey(BellKind.STRAND_CHECK, 21, 22), ofMinutes(3), BellShelved.Why.HANDS_FULL));

    private EventSamples() {}

    public static List<Event> all() {
        return Stream.of(SALON, DAY, STAY, WORK, LOOKS, NOTES)
                .flatMap(List::stream)
                .toList();
    }
}
